package fascicle.workings.acidity;

import fascicle.bath.Dissolved;
import fascicle.notebook.Bath;
import fascicle.notebook.Cover;
import fascicle.notebook.Dye;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.MethodWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import fascicle.workings.Workings;
import fascicle.workings.chain.InThePot;
import fascicle.workings.chain.Succession;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Estimates how sour the baths of a notebook are. */
public final class Acidities {

    private static final double MILLILITRES = 1000;

    private final Cover cover;
    private final Acids acids;
    private final Succession succession;

    private Acidities(Workings workings) {
        cover = workings.notebook().cover();
        acids = new Acids(Notebook.byId(workings.notebook().shelf().dyes(), Dye::id));
        succession = Succession.of(workings);
    }

    /**
     * Looks through a notebook.
     *
     * @param workings an edition's figures
     * @return what estimates the acidity of its baths
     */
    public static Acidities of(Workings workings) {
        return new Acidities(workings);
    }

    /**
     * An entry's dyebath. In a reused one the acid is what went in before, less what wet needles carried out.
     *
     * @param entry the entry
     * @return its acidity
     */
    public AcidityFigures bath(EntryWorking entry) {
        List<EntryWorking> path = succession.path(entry);
        if (succession.isOfUnknownBath(path.get(0))) {
            return Content.unknown(AcidityFigures.Kind.EARLIER_MISSING).figures();
        }
        BathFigures first = path.get(0).bath();
        Content content = fresh(written(path.get(0)), first.waterMl(), first.liquorMl(), first.dye(),
                first.assistants());
        for (int place = 1; place < path.size(); place++) {
            content = content instanceof Content.Known known ? reused(known, path.get(place - 1), path.get(place))
                    : content;
        }
        return content.figures();
    }

    /**
     * A method's dyebath, for the weight its amounts are for.
     *
     * @param method the method
     * @return its acidity
     */
    public AcidityFigures bath(MethodWorking method) {
        BathFigures bath = method.bath();
        return ofRecipe(method.method().recipe().bath(), bath.waterMl(), bath.liquorMl(), bath.dye(),
                bath.assistants());
    }

    /**
     * The dyebath of a recipe that was scaled.
     *
     * @param scaled the quantities
     * @param written the bath of the entry or method they were scaled from
     * @return its acidity
     */
    public AcidityFigures bath(Scaled scaled, Bath written) {
        return ofRecipe(written, scaled.waterMl(), scaled.liquorMl(), scaled.dye(), scaled.assistants());
    }

    /**
     * A bin before the bath, filled from the tap.
     *
     * @param soak its figures; a bin that several pots share is taken whole
     * @return its acidity
     */
    public AcidityFigures presoak(SoakFigures soak) {
        return mixed(Bath.Source.TAP, soak.waterMl(), soak.liquorMl(), List.of(), soak.with()).figures();
    }

    private AcidityFigures ofRecipe(Bath written, OptionalDouble water, OptionalDouble liquor, List<PartFigures> dyes,
            List<PartFigures> assistants) {
        return written.reuses().isPresent() ? Content.unknown(AcidityFigures.Kind.REUSED).figures()
                : fresh(written, water, liquor, dyes, assistants).figures();
    }

    private static Bath written(EntryWorking entry) {
        return entry.entry().recipe().bath();
    }

    private Content fresh(Bath written, OptionalDouble water, OptionalDouble liquor, List<PartFigures> dyes,
            List<PartFigures> assistants) {
        return written.extract().isPresent() ? Content.unknown(AcidityFigures.Kind.PLANT)
                : mixed(source(written), water, liquor, dyes, assistants);
    }

    private static Bath.Source source(Bath written) {
        return written.from().map(Noted::value).orElse(Bath.Source.TAP);
    }

    private Content reused(Content.Known before, EntryWorking earlier, EntryWorking entry) {
        InThePot left = InThePot.of(earlier);
        BathFigures bath = entry.bath();
        if (bath.liquorMl().isEmpty()) {
            return Content.unknown(AcidityFigures.Kind.LIQUOR);
        }
        if (!left.stays().known()) {
            return Content.unknown(AcidityFigures.Kind.EARLIER_NEEDLES);
        }
        if (written(entry).extract().isPresent()) {
            return Content.unknown(AcidityFigures.Kind.PLANT);
        }
        double taken = left.taken(bath);
        double added = StrictMath.max(0, bath.liquorMl().getAsDouble() - bath.liquidPartsMl().orElseThrow()
                - taken * left.millilitres().orThrow());
        Content content = mixed(source(written(entry)), OptionalDouble.of(added), bath.liquorMl(), bath.dye(),
                bath.assistants());
        if (!(content instanceof Content.Known fresh)) {
            return content;
        }
        Dissolved carried = before.dissolved().heated(before.litres())
                .times(left.stays().orThrow() * taken);
        return new Content.Known(carried.plus(fresh.dissolved()), fresh.litres());
    }

    /** Water and what was put into it. */
    private Content mixed(Bath.Source source, OptionalDouble water, OptionalDouble liquor, List<PartFigures> dyes,
            List<PartFigures> assistants) {
        // What makes an estimate senseless comes before what is merely missing.
        double litres = liquor.isPresent() && liquor.getAsDouble() > 0 ? liquor.getAsDouble() / MILLILITRES : 1;
        return join(acids.of(dyes, true, litres), ofDyes -> join(acids.of(assistants, false, litres), ofOthers -> {
            if (water.isEmpty() || liquor.isEmpty() || liquor.getAsDouble() <= 0) {
                return Content.unknown(AcidityFigures.Kind.LIQUOR);
            }
            return join(water(source, water.getAsDouble() / MILLILITRES), poured -> new Content.Known(
                    poured.dissolved().plus(ofDyes.dissolved()).plus(ofOthers.dissolved()), litres));
        }));
    }

    private static Content join(Content content, Function<Content.Known, Content> next) {
        return content instanceof Content.Known known ? next.apply(known) : content;
    }

    /** Softening takes hardness and leaves alkalinity; rain has none; of a well the notebook does not speak. */
    private Content water(Bath.Source source, double litres) {
        return switch (source) {
            case RAIN -> new Content.Known(Dissolved.rain(litres), litres);
            case WELL -> Content.unknown(AcidityFigures.Kind.WELL);
            case TAP, SOFTENED -> cover.alkalinity().<Content>map(alkalinity ->
                    new Content.Known(Dissolved.water(litres,
                    alkalinity.value(), cover.ph().map(Noted::value).orElse(Dissolved.PH_OF_WATER)), litres))
                    .orElse(Content.unknown(AcidityFigures.Kind.WATER));
        };
    }
}
