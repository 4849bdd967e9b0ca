package fascicle.book.caution;

import fascicle.book.words.Words;
import fascicle.notebook.Vessel;
import fascicle.notebook.label.HazardStatement;
import fascicle.workings.care.Hazard;
import fascicle.workings.care.Hazards;
import fascicle.workings.care.Uses;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Cautions in plain sentences. They are the usual ones, and the last of them always defers to the pack's label, local
 * rules and licensed practice.
 */
public final class CautionWords {

    private CautionWords() {}

    /**
     * The cautions for what is used.
     *
     * @param uses what one recipe uses, or several together
     * @param words the book's words
     * @return as {@link #of(List, Words)}
     */
    public static List<String> of(Uses uses, Words words) {
        return of(Hazards.of(uses), words);
    }

    /**
     * Hazards in words.
     *
     * @param hazards the hazards, gravest first
     * @param words the book's words
     * @return a sentence or two for each, in their order, and the deferring one at the end; none where there is no
     *     hazard
     */
    public static List<String> of(List<Hazard> hazards, Words words) {
        if (hazards.isEmpty()) {
            return List.of();
        }
        List<String> sentences = new ArrayList<>(hazards.stream().map(hazard -> say(hazard, words)).toList());
        sentences.add(words.say("caution.defer"));
        return List.copyOf(sentences);
    }

    /**
     * What to know of the vessel itself.
     *
     * @param pot the vessel and its bath
     * @param words the book's words
     * @return the remark, if its metal takes part in the bath or it does not bear the heat
     */
    public static Optional<String> pot(Uses.Pot pot, Words words) {
        return Hazards.ofPot(pot).map(hazard -> say(hazard, words));
    }

    /**
     * What a pack says of one hazard.
     *
     * @param statement the statement
     * @param words the book's words
     * @return the system's words with the code, or what was written where the system has none for it
     */
    public static String statement(HazardStatement statement, Words words) {
        return statement.wording().map(wording -> words.say("caution.statement", wording, statement.code()))
                .orElseGet(() -> words.say("caution.statement-as-written", statement.written()));
    }

    private static String say(Hazard hazard, Words words) {
        if (hazard instanceof Hazard.Usual usual) {
            String sentence = words.say("caution." + key(usual.kind()));
            return usual.things().isEmpty() ? sentence
                    : words.say("caution.here", sentence, list(usual.things(), words));
        }
        if (hazard instanceof Hazard.OnThePack pack) {
            return onThePack(pack, words);
        }
        if (hazard instanceof Hazard.InTheMakersWords own) {
            return words.say("caution.own", own.thing(), String.join(words.say("pieces"), own.cautions()));
        }
        if (hazard instanceof Hazard.ThePotGivesWay pot) {
            return words.say("caution.pot", pot.vessel(), words.say("caution.pot-" + pot.material().word()));
        }
        return potTakesPart((Hazard.ThePotTakesPart) hazard, words);
    }

    private static String onThePack(Hazard.OnThePack pack, Words words) {
        String says = pack.says().stream().map(statement -> words.say("sentence", statement(statement, words)))
                .collect(Collectors.joining(" "));
        String signal = pack.signal().map(word -> words.say("sentence", words.say("signal." + word))).orElse("");
        return words.say("caution.on-the-pack", pack.thing(), (signal + " " + says).strip());
    }

    private static String potTakesPart(Hazard.ThePotTakesPart pot, Words words) {
        String key = "caution.pot-" + pot.material().word();
        String remark = pot.sour() ? words.say("caution.pot-sour", words.say(key)) : words.say(key);
        boolean eaten = pot.alkaline() && pot.material() == Vessel.Material.ALUMINIUM;
        return words.say("caution.pot", pot.vessel(), eaten ? words.say("caution.pot-alkaline", remark) : remark);
    }

    /** Things side by side; a title may hold a comma itself. */
    static String list(List<String> things, Words words) {
        return String.join(words.say("caution.between"), things);
    }

    /** A constant as keys spell it. */
    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
