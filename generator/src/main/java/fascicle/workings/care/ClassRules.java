package fascicle.workings.care;

import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import fascicle.notebook.label.HazardStatement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What of a recipe may not be planned for a class ({@code common practice, no source}, but for labels). Local rules may
 * ask for more; {@link Duty} tells what the teacher does of the rest.
 *
 * @param refusals why it may not be planned; none where it may
 */
public record ClassRules(List<Refusal> refusals) {

    /**
     * Codes of what the European Union keeps from workers under eighteen, and so from younger hands still: Council
     * Directive 94/33/EC as amended by Directive 2014/27/EU, Annex, I.3(a) (from memory).
     */
    private static final Set<String> NOT_FOR_MINORS = Set.of("H300", "H310", "H330", "H301", "H311", "H331", "H314",
            "H220", "H221", "H222", "H224", "H225", "H200", "H201", "H202", "H203", "H204", "H205", "H240", "H241",
            "H242", "H370", "H371", "H372", "H373", "H334", "H317", "H350", "H350i", "H351", "H340", "H341", "H360",
            "H360F", "H360FD", "H360Fd", "H360D", "H360Df");

    /**
     * Codes of what is for no class, however old: cancer, genes, fertility and the unborn, asthma. Gloves, care and a
     * solution made ahead keep off what burns or poisons at once; of these a teacher cannot judge what amount is safe,
     * and nobody should have to tell a class that she is pregnant or has asthma. Another dye does as well: what can be
     * replaced must be is the law for work (Directive 2004/37/EC, Article 4, from memory; asthma: {@code common
     * practice, no source}).
     */
    private static final Pattern FOR_NO_CLASS = Pattern.compile("H(340|350|360)[A-Za-z]*|H334[A-Z]?");

    /**
     * Why a recipe may not be planned for a class.
     *
     * @param thing the title of what stands in the way; nothing where a bath does not name what brings its metal
     * @param reason why
     * @param says what its pack says, where that is the reason
     */
    public record Refusal(Optional<String> thing, Reason reason, List<HazardStatement> says) {}

    /** Why something is not for a class. */
    public enum Reason {
        /** Its file is missing, has errors or says nothing. */
        UNKNOWN_THING,
        /** It is a chrome salt. */
        CHROME,
        /** It is a copper salt. */
        COPPER,
        /** A mordant whose metal nobody said; {@code metal:} in its file would. */
        UNKNOWN_METAL,
        /** A copper vessel gives copper to the bath. */
        COPPER_POT,
        /** A plastic vessel softens on a stove and drops its hot liquor. */
        PLASTIC_POT,
        /** Its pack warns of what is for no class. */
        LABEL,
        /** Nobody can tell what its pack warns of: what was copied from it is no code, and may be one for no class. */
        UNREAD_LABEL,
        /** Nobody said what its pack warns of, so it may be what is kept from minors; {@code label:} would. */
        NO_LABEL_AND_MINORS,
        /** Minors handle nothing of which nobody said what it is; {@code kind:} in its file would. */
        UNKNOWN_KIND,
        /** Minors handle no metal salt but alum. */
        METAL_AND_MINORS,
        /** Its pack warns of what is kept from minors. */
        LABEL_AND_MINORS,
        /**
         * Minors handle it dissolved alone, and nobody knows how many grams to dissolve; an amount in grams would tell.
         */
        UNWEIGHED_AND_MINORS,
        /** Minors handle it dissolved alone, and needles are finished with it dry. */
        DRY_FINISH_AND_MINORS
    }

    /**
     * Judges what a class would use.
     *
     * @param uses what one recipe uses, or several together
     * @param minors whether anyone in the class is under eighteen
     * @return what is refused
     */
    public static ClassRules of(Uses uses, boolean minors) {
        return new ClassRules(refusals(uses, minors));
    }

    /**
     * Whether the class may have it.
     *
     * @return true where nothing is refused
     */
    public boolean allows() {
        return refusals.isEmpty();
    }

    /**
     * What a class gets as solutions that the teacher made ahead.
     *
     * @param uses what one recipe uses, or several together
     * @param minors whether anyone in the class is under eighteen
     * @return the powders; for minors alum and the crystals of acids and alkalis too
     */
    public static List<Dye> asSolutions(Uses uses, boolean minors) {
        List<Dye> powders = uses.powders();
        return !minors ? powders : Stream.concat(powders.stream(), dissolvedAhead(uses).stream()).toList();
    }

    /** What minors get dissolved beside the powders. */
    static List<Dye> dissolvedAhead(Uses uses) {
        List<Dye> powders = uses.powders();
        return uses.added().stream().filter(thing -> !powders.contains(thing)).filter(ClassRules::isDissolvedAhead)
                .toList();
    }

    private static List<Refusal> refusals(Uses uses, boolean minors) {
        List<Refusal> refusals = new ArrayList<>();
        uses.unknown().forEach(thing -> refusals.add(refusal(thing, Reason.UNKNOWN_THING)));
        // Of a thing of which nothing is known it goes without saying that its metal is not.
        uses.salts().stream().filter(salt ->
                salt.metal().isPresent() || salt.thing().filter(Dye::saysNothing).isEmpty())
                .forEach(salt -> reason(salt.metal(), minors).ifPresent(reason ->
                        refusals.add(new Refusal(salt.thing().map(Dye::called), reason, List.of()))));
        uses.pots().forEach(pot -> reason(pot).ifPresent(reason ->
                refusals.add(new Refusal(Optional.of(pot.vessel().called()), reason, List.of()))));
        refusals.addAll(labelled(uses, Reason.LABEL, ClassRules::isForNoClass));
        refusals.addAll(labelled(uses, Reason.UNREAD_LABEL, HazardStatement::isUnread));
        if (minors) {
            uses.unsorted().forEach(thing -> refusals.add(refusal(thing, Reason.UNKNOWN_KIND)));
            uses.unlabelled().forEach(thing -> refusals.add(refusal(thing, Reason.NO_LABEL_AND_MINORS)));
            refusals.addAll(labelled(uses, Reason.LABEL_AND_MINORS,
                    says -> !isForNoClass(says) && says.codes().stream().anyMatch(NOT_FOR_MINORS::contains)));
        }
        return List.copyOf(refusals);
    }

    /** Whether a pack warns of what is planned for no class. */
    static boolean isForNoClass(HazardStatement says) {
        return says.codes().stream().anyMatch(code -> FOR_NO_CLASS.matcher(code).matches());
    }

    private static List<Refusal> labelled(Uses uses, Reason reason, Predicate<HazardStatement> grave) {
        return uses.things().stream().map(thing -> new Refusal(Optional.of(thing.called()), reason,
                Hazards.statements(thing).stream().filter(grave).toList()))
                .filter(refusal -> !refusal.says().isEmpty()).toList();
    }

    private static Refusal refusal(Dye thing, Reason reason) {
        return new Refusal(Optional.of(thing.called()), reason, List.of());
    }

    private static Optional<Reason> reason(Optional<Dye.Metal> metal, boolean minors) {
        return metal.isEmpty() ? Optional.of(Reason.UNKNOWN_METAL) : switch (metal.get()) {
            case CHROME -> Optional.of(Reason.CHROME);
            case COPPER -> Optional.of(Reason.COPPER);
            case IRON, TIN -> minors ? Optional.of(Reason.METAL_AND_MINORS) : Optional.empty();
            case ALUMINIUM -> Optional.empty();
        };
    }

    private static Optional<Reason> reason(Uses.Pot pot) {
        return pot.vessel().madeOf().map(Noted::value).flatMap(made -> switch (made) {
            case COPPER -> Optional.of(Reason.COPPER_POT);
            case PLASTIC -> pot.strain().heated() ? Optional.of(Reason.PLASTIC_POT) : Optional.empty();
            case ENAMEL, STAINLESS, ALUMINIUM, IRON, GLASS -> Optional.empty();
        });
    }

    /** Alum in any dry form, and crystals of an acid or an alkali. */
    private static boolean isDissolvedAhead(Dye thing) {
        boolean liquid = thing.form().map(Noted::value).filter(Dye.Form.LIQUID::equals).isPresent();
        boolean crystals = thing.form().map(Noted::value).filter(Dye.Form.CRYSTALS::equals).isPresent();
        return Metals.bringsMetal(thing) && !liquid || crystals && thing.kind().map(Noted::value)
                .filter(kind -> kind == Dye.Kind.ACID || kind == Dye.Kind.ALKALI).isPresent();
    }
}
