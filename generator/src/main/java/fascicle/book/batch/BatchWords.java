package fascicle.book.batch;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.BatchRemark;
import fascicle.workings.Measuring;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What to know of a batch beside its quantities, in sentences. */
public final class BatchWords {

    private final PartWords parts;
    private final Words words;
    private final Figures figures;

    /**
     * Words for batches.
     *
     * @param measuring what is measured with
     * @param words the book's words
     */
    public BatchWords(Measuring measuring, Words words) {
        this(new PartWords(measuring, words), words);
    }

    /**
     * Words for batches.
     *
     * @param parts words for their parts
     * @param words the book's words
     */
    public BatchWords(PartWords parts, Words words) {
        this.parts = parts;
        this.words = words;
        this.figures = new Figures(words);
    }

    /**
     * What a batch is done in.
     *
     * @param scaled the batch
     * @return the vessel, how many of them, how full each is and how deep that stands; nothing where no vessel is named
     */
    public Optional<String> pots(Scaled scaled) {
        String vessel = scaled.vessel().map(found -> found.called()).or(scaled::vesselId).orElse("");
        if (vessel.isEmpty()) {
            return Optional.empty();
        }
        if (scaled.pots().isEmpty() || scaled.filled().isEmpty()) {
            return Optional.of(vessel);
        }
        String filled = Figures.atMost(scaled.filled().getAsDouble() * 100, 0);
        String deep = figures.tenths(scaled.depthCm().orElseThrow());
        int pots = scaled.pots().getAsInt();
        return Optional.of(pots == 1 ? words.say("batch.pot", vessel, filled, deep)
                : words.say("batch.pots", pots, vessel, filled, deep,
                        figures.amount(scaled.needlesGrams() / pots, "g", false)));
    }

    /**
     * A line's amount in one run of words.
     *
     * @param row any line of a sheet
     * @return the whole, and each pot's share where there are several pots; what the maker wrote where that is all
     */
    public String amount(BatchSheet.Row row) {
        if (row.whole().isEmpty()) {
            return row.told(words).stream().findFirst().orElseGet(() -> words.say("table.unknown"));
        }
        String whole = String.join(words.say("pieces"), row.whole());
        return !row.isShared() ? whole : words.say("batch.per-pot", whole,
                words.say("batch.each-pot", String.join(words.say("pieces"), row.each())));
    }

    /**
     * What to know of a batch.
     *
     * @param scaled the batch
     * @return a sentence for each remark, once, and how a stock solution is made where one is to be made
     */
    public List<String> remarks(Scaled scaled) {
        List<String> said = new ArrayList<>();
        scaled.remarks().forEach(remark -> said.add(said(remark)));
        said.addAll(ofBaths(scaled));
        Stream<PartFigures> ofOnePot = scaled.parts().stream().map(part -> part.sharedBy(scaled.pots().orElse(1)));
        stocks(Stream.concat(scaled.everything().stream(), ofOnePot))
                .forEach(percent -> said.add(parts.making(percent)));
        if (scaled.everything().stream().anyMatch(PartFigures::spooned)) {
            said.add(words.say("batch.spoons-wander"));
        }
        return said.stream().distinct().toList();
    }

    /**
     * What whoever makes up a pot must know: not what was settled when the day was planned, nor what the rows say.
     *
     * @param pot the quantities of one pot
     * @return a sentence for each such remark, and how its stock solutions are made
     */
    public List<String> atThePot(Scaled pot) {
        return Stream.concat(pot.remarks().stream().filter(remark -> !isSettled(remark)).map(this::said),
                stocks(pot.everything().stream()).map(parts::makingAtThePot)).distinct().toList();
    }

    /**
     * Paler or not, and why there are no figures: that is weighed when a batch is planned. What is odd stands first.
     */
    private static boolean isSettled(BatchRemark remark) {
        return remark instanceof BatchRemark.Paler || remark instanceof BatchRemark.Unmeasured
                || remark instanceof BatchRemark.NoLiquor || remark instanceof BatchRemark.Odd;
    }

    /** The strengths of the stocks that the balance asks for. */
    private Stream<Double> stocks(Stream<PartFigures> of) {
        return of.flatMap(part -> parts.toMake(part).stream()).map(stock -> stock.percent()).distinct().sorted();
    }

    /** Why a bath beside the dyebath is not worked out, and how what is drawn out belongs to the rest. */
    private List<String> ofBaths(Scaled scaled) {
        Stream<String> bin = scaled.presoak().stream().flatMap(soak -> soak.shared()
                ? Stream.of(words.say("batch.shared-bin")) : unknown(soak, words.say("step.presoak")));
        StepNames names = StepNames.of(scaled, words);
        Stream<String> treatments = Stream.concat(unknown(scaled.before(), names.before()),
                unknown(scaled.after(), names.after()));
        Stream<String> drawn = scaled.extract().stream().map(plant -> words.say("batch.drawn"));
        return Stream.of(bin, treatments, drawn).flatMap(sentences -> sentences).toList();
    }

    private Stream<String> unknown(List<SoakFigures> soaks, List<String> titles) {
        return IntStream.range(0, soaks.size()).boxed().flatMap(place -> unknown(soaks.get(place), titles.get(place)));
    }

    private Stream<String> unknown(SoakFigures soak, String title) {
        return soak.liquorMl().isPresent() ? Stream.empty() : Stream.of(words.say("batch.no-soak-water", title));
    }

    private String said(BatchRemark remark) {
        if (remark instanceof BatchRemark.OverDye overDye) {
            return words.say("batch.over-dye", overDye.called());
        }
        if (remark instanceof BatchRemark.Paler paler) {
            return words.say("batch.paler", figures.amount(paler.from(), "ratio", false),
                    figures.amount(paler.to(), "ratio", false));
        }
        if (remark instanceof BatchRemark.TooLong tooLong) {
            return words.say("batch.too-long", figures.measured(tooLong.length()), centimetres(tooLong.line()));
        }
        if (remark instanceof BatchRemark.NoRoom noRoom) {
            return words.say("batch.no-room", figures.measured(noRoom.depth()), centimetres(noRoom.most()));
        }
        if (remark instanceof BatchRemark.TooShallow shallow) {
            return words.say("batch.too-shallow", figures.tenths(shallow.depth()));
        }
        if (remark instanceof BatchRemark.Unmeasured unmeasured) {
            return words.say("batch.unmeasured", unmeasured.vessel());
        }
        if (remark instanceof BatchRemark.TooMuchStock stock) {
            return words.say("batch.too-much-stock", stock.thing(), figures.amount(stock.millilitres(), "ml", false));
        }
        if (remark instanceof BatchRemark.Odd odd) {
            return new OddWords(words).said(odd);
        }
        if (remark instanceof BatchRemark.ManyPots many) {
            return words.say("batch.many-pots", many.pots(), many.most());
        }
        if (remark instanceof BatchRemark.LeftTooLittle little) {
            return words.say("batch.reused-short", figures.amount(little.taken(), "ml").orElseThrow(),
                    figures.amount(little.left(), "ml").orElseThrow(),
                    figures.amount(little.enoughFor(), "g").orElseThrow());
        }
        if (remark instanceof BatchRemark.Reused reused) {
            return figures.amount(reused.left(), "ml").map(left -> words.say("batch.reused-of", left))
                    .orElseGet(() -> words.say("batch.reused"));
        }
        return words.say(remark instanceof BatchRemark.NoLiquor ? "batch.no-liquor" : "batch.too-weak");
    }

    private String centimetres(double length) {
        return figures.amount(length, "cm", false);
    }
}
