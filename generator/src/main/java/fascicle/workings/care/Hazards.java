package fascicle.workings.care;

import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import fascicle.notebook.Vessel;
import fascicle.notebook.label.HazardStatement;
import fascicle.workings.care.Hazard.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The hazards of what is used: each stands where its cause does and nowhere else ({@code common practice, no source};
 * labels in the words of the Globally Harmonized System).
 */
public final class Hazards {

    /** Codes of what burns in a bottle: aerosols, liquids, solids (UN GHS, Annex 3). */
    private static final Set<String> BURNS = Set.of("H222", "H223", "H224", "H225", "H226", "H227", "H228");

    /** Finishes that burn, or whose spirit does, by their English names. */
    private static final Set<String> BURNING_NAMES =
            Set.of("shellac", "varnish", "lacquer", "turpentine", "spirit", "spirits");

    /** Finishes that dry by taking up oxygen, and heat a crumpled rag by it, by their English names. */
    private static final Pattern DRYING_OIL = Pattern.compile("\\b(linseed|flaxseed|tung|danish|walnut[^a-z]+oil)\\b");

    private static final List<String> GRAVEST_FIRST = List.of("danger", "warning", "");

    private final Uses uses;
    private final List<Hazard> hazards = new ArrayList<>();

    private Hazards(Uses uses) {
        this.uses = uses;
    }

    /**
     * The hazards of what is used.
     *
     * @param uses what one recipe uses, or several together
     * @return the hazards, gravest first
     */
    public static List<Hazard> of(Uses uses) {
        Hazards found = new Hazards(uses);
        found.find();
        return List.copyOf(found.hazards);
    }

    private void find() {
        List<Dye> acids = uses.of(Dye.Kind.ACID);
        List<Dye> alkalis = uses.of(Dye.Kind.ALKALI);
        List<Uses.Salt> forbidden = Stream.concat(uses.of(Optional.of(Dye.Metal.CHROME)).stream(),
                uses.of(Optional.of(Dye.Metal.COPPER)).stream()).toList();
        uses.pots().forEach(pot -> givingWay(pot).ifPresent(hazards::add));
        things(Kind.NOTHING_IS_KNOWN, uses.unknown());
        salts(Kind.CHROME_OR_COPPER, forbidden);
        salts(Kind.UNKNOWN_METAL, uses.of(Optional.empty()));
        things(Kind.UNKNOWN_KIND, uses.unsorted());
        work(Kind.HOT, uses.hot());
        work(Kind.HOT_POT, uses.hot());
        things(Kind.NO_LABEL, uses.unlabelled());
        things(Kind.NEVER_FOR_A_CLASS, uses.things().stream().filter(thing -> statements(thing).stream()
                .anyMatch(ClassRules::isForNoClass)).toList());
        packs();
        things(Kind.POWDER, uses.powders());
        work(Kind.DYE_LEFT_OPEN, uses.dyeLeftOpen());
        work(Kind.UNKNOWN_BATH, uses.unknownBath());
        work(Kind.LIKE_A_DRINK, uses.likeADrink());
        things(Kind.ACID, acids);
        work(Kind.SOUR_STEAM, uses.sourSteam());
        work(Kind.BLEACH, !acids.isEmpty());
        things(Kind.ALKALI, alkalis);
        salts(Kind.TIN, uses.of(Optional.of(Dye.Metal.TIN)));
        salts(Kind.IRON, uses.of(Optional.of(Dye.Metal.IRON)));
        List<Uses.Salt> alum = uses.of(Optional.of(Dye.Metal.ALUMINIUM));
        boolean mild = alum.size() == uses.salts().size();
        salts(Kind.ALUM, mild ? alum : List.of());
        work(Kind.METAL, !mild);
        things(Kind.PLANT, uses.plants());
        things(Kind.FLAMMABLE_FINISH, uses.finish().stream().filter(Hazards::burns).toList());
        things(Kind.OILY_RAGS, uses.finish().stream().filter(Hazards::isDryingOil).toList());
        work(Kind.DRY_NEEDLES, uses.hot());
        work(Kind.GLOVES_AND_AIR, uses.colours() || uses.hot() || !acids.isEmpty() || !alkalis.isEmpty());
        uses.things().stream().filter(thing -> !thing.cautions().isEmpty()).forEach(thing -> hazards.add(
                new Hazard.InTheMakersWords(thing.called(), thing.cautions().stream().map(Noted::value).toList())));
        uses.pots().forEach(pot -> takingPart(pot).ifPresent(hazards::add));
        work(Kind.FOOD, uses.colours());
        boolean label = !uses.unlabelled().isEmpty() || uses.things().stream().anyMatch(Hazards::isLabelled);
        work(Kind.DRAIN, uses.colours() || !alkalis.isEmpty() || label);
        work(Kind.BURN, uses.hot());
        work(Kind.FIRST_HELP, uses.colours() || !acids.isEmpty() || !alkalis.isEmpty() || label);
    }

    /**
     * What is wrong with a vessel for its bath.
     *
     * @param pot the vessel and its bath
     * @return that it gives way, or that its metal takes part; nothing for what suits it, or an unknown material
     */
    public static Optional<Hazard> ofPot(Uses.Pot pot) {
        return givingWay(pot).<Hazard>map(hazard -> hazard).or(() -> takingPart(pot));
    }

    private static Optional<Hazard.ThePotGivesWay> givingWay(Uses.Pot pot) {
        return pot.vessel().madeOf().map(Noted::value).filter(made -> pot.strain().heated() && !made.bearsHeat())
                .map(made -> new Hazard.ThePotGivesWay(pot.vessel().called(), made));
    }

    private static Optional<Hazard.ThePotTakesPart> takingPart(Uses.Pot pot) {
        return pot.vessel().madeOf().map(Noted::value).filter(Set.of(Vessel.Material.IRON, Vessel.Material.COPPER,
                Vessel.Material.ALUMINIUM)::contains)
                .map(material -> new Hazard.ThePotTakesPart(pot.vessel().called(), material, pot.strain().sour(),
                        pot.strain().alkaline()));
    }

    /** What a thing's pack says. */
    static List<HazardStatement> statements(Dye thing) {
        return thing.label().stream().flatMap(label -> label.says().stream())
                .map(says -> HazardStatement.read(says.value())).toList();
    }

    static boolean isLabelled(Dye thing) {
        return thing.label().filter(label -> label.signal().isPresent() || !label.says().isEmpty()).isPresent();
    }

    private void packs() {
        uses.things().stream().filter(Hazards::isLabelled)
                .sorted(Comparator.comparingInt(thing -> GRAVEST_FIRST.indexOf(signal(thing).orElse(""))))
                .forEach(thing -> hazards.add(
                        new Hazard.OnThePack(thing.called(), signal(thing), statements(thing))));
    }

    private static Optional<String> signal(Dye thing) {
        return thing.label().flatMap(Dye.Label::signal).map(Noted::value);
    }

    private static boolean burns(Dye finish) {
        return statements(finish).stream().flatMap(says -> says.codes().stream()).anyMatch(BURNS::contains)
                || Stream.of(names(finish).split("[^a-z]+")).anyMatch(BURNING_NAMES::contains);
    }

    private static boolean isDryingOil(Dye finish) {
        return DRYING_OIL.matcher(names(finish)).find();
    }

    private static String names(Dye thing) {
        return (thing.id() + " " + thing.called()).toLowerCase(Locale.ROOT);
    }

    private void work(Kind kind, boolean holds) {
        if (holds) {
            hazards.add(new Hazard.Usual(kind, List.of()));
        }
    }

    private void things(Kind kind, List<Dye> things) {
        if (!things.isEmpty()) {
            hazards.add(new Hazard.Usual(kind, things.stream().map(Dye::called).toList()));
        }
    }

    private void salts(Kind kind, List<Uses.Salt> salts) {
        if (!salts.isEmpty()) {
            hazards.add(new Hazard.Usual(kind,
                    salts.stream().flatMap(salt -> salt.thing().stream()).map(Dye::called).toList()));
        }
    }
}
