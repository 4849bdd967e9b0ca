package fascicle.workings.acidity;

import fascicle.bath.Dissolved;
import fascicle.bath.Magnitude;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.workings.PartFigures;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Understands parts as acids. */
final class Acids {

    private final Map<String, Dye> dyes;

    Acids(Map<String, Dye> dyes) {
        this.dyes = dyes;
    }

    /**
     * The acids among parts; nothing else counts but alkalis, mordants and plants, beside which no estimate is made.
     *
     * @param parts of one bath
     * @param amongDyes whether they stand in a list of dyes, where what is of no known kind counts as a dye
     * @param litres of liquor
     * @return the acids alone
     */
    Content of(List<PartFigures> parts, boolean amongDyes, double litres) {
        Dissolved all = Dissolved.NOTHING;
        for (PartFigures part : parts) {
            Content content = of(part, amongDyes, litres);
            if (!(content instanceof Content.Known known)) {
                return content;
            }
            all = all.plus(known.dissolved());
        }
        return new Content.Known(all, litres);
    }

    private Content of(PartFigures part, boolean amongDyes, double litres) {
        Optional<Dye> dye = Optional.ofNullable(dyes.get(Ids.key(part.is())));
        if (dye.flatMap(Dye::form).map(Noted::value).filter(Dye.Form.PLANT::equals).isPresent()) {
            return Content.unknown(AcidityFigures.Kind.PLANT);
        }
        Optional<Dye.Kind> kind = dye.flatMap(Dye::kind).map(Noted::value)
                .or(() -> amongDyes ? Optional.of(Dye.Kind.DYE) : Optional.empty());
        if (kind.isEmpty()) {
            return unknown(AcidityFigures.Kind.KIND, part);
        }
        return switch (kind.get()) {
            case ALKALI -> unknown(AcidityFigures.Kind.ALKALI, part);
            case MORDANT -> unknown(AcidityFigures.Kind.MORDANT, part);
            case ACID -> acid(part, dye.orElseThrow(), litres);
            case DYE, SALT, WETTING, OTHER -> new Content.Known(Dissolved.NOTHING, litres);
        };
    }

    private static Content acid(PartFigures part, Dye dye, double litres) {
        Optional<Dye.Acid> acid = dye.acid().map(Noted::value).or(() -> byName(dye));
        if (acid.isEmpty()) {
            return unknown(AcidityFigures.Kind.ACID_KIND, part);
        }
        Optional<Double> strength = dye.acidity().map(Noted::value);
        // Vinegar is never a powder, whatever its file leaves out.
        if (strength.isEmpty() && (part.liquid() || acid.get() == Dye.Acid.ACETIC)) {
            return unknown(AcidityFigures.Kind.ACID_STRENGTH, part);
        }
        Magnitude density = dye.density().map(noted -> Magnitude.of(noted.value())).orElse(Magnitude.UNKNOWN);
        Magnitude amount = part.liquid() ? part.volumeAsSold(density) : part.mass();
        if (!amount.known()) {
            return unknown(AcidityFigures.Kind.ACID_AMOUNT, part);
        }
        // A liquid holds as many grams in 100 mL, a powder in 100 g, as its acidity has per cent.
        double grams = amount.orThrow() * strength.orElse(100.0) / 100;
        return new Content.Known(acid.get() == Dye.Acid.ACETIC ? Dissolved.acetic(grams) : Dissolved.citric(grams),
                litres);
    }

    /** Which acid a thing is by its own name in English. */
    private static Optional<Dye.Acid> byName(Dye dye) {
        String name = (dye.id() + " " + dye.called()).toLowerCase(Locale.ROOT);
        if (name.contains("vinegar") || name.contains("acetic")) {
            return Optional.of(Dye.Acid.ACETIC);
        }
        return name.contains("citric") || name.contains("lemon") ? Optional.of(Dye.Acid.CITRIC) : Optional.empty();
    }

    private static Content unknown(AcidityFigures.Kind kind, PartFigures part) {
        return new Content.Unknown(new AcidityFigures.Why(kind, Optional.of(part.is()), Optional.of(part.called())));
    }
}
