package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.Fact;
import fascicle.book.page.Link;
import fascicle.book.words.Words;
import fascicle.notebook.Bath;
import fascicle.notebook.Noted;
import fascicle.workings.acidity.AcidityFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How sour a bath is, as estimated, and where what was measured lies elsewhere. */
public final class AcidityComposer {

    /** How far a meter's reading may part from the estimate before it is remarked on, and a strip's. */
    private static final double OFF_BY_METER = 0.5;
    private static final double OFF_BY_STRIP = 1;

    private final Words words;

    /**
     * Acidities in the book's words.
     *
     * @param words the book's words
     */
    public AcidityComposer(Words words) {
        this.words = words;
    }

    /** The estimate, or why there is none; with a remark where what was measured in the cold bath lies far from it. */
    Fact fact(AcidityFigures acidity, Optional<Bath.Ph> measured) {
        List<Link> values = new ArrayList<>();
        values.add(Link.plain(said(acidity)));
        measured.flatMap(ph -> apart(acidity.cold(), ph)).ifPresent(remark -> values.add(Link.plain(remark)));
        return new Fact(words.say("fact.ph-estimate"), List.copyOf(values), Optional.empty());
    }

    /** The estimate of a bin that nobody heats. */
    Fact cold(AcidityFigures acidity) {
        return Fact.of(words.say("fact.ph-estimate"), acidity.cold().isPresent()
                ? words.say("about", figure(acidity.cold().getAsDouble())) : said(acidity));
    }

    /**
     * The estimate, or why there is none.
     *
     * @param acidity of a bath
     * @return such as {@code about 3.7, cold or heated}
     */
    public String said(AcidityFigures acidity) {
        if (acidity.cold().isPresent() && acidity.heated().isPresent()) {
            String cold = figure(acidity.cold().getAsDouble());
            String heated = figure(acidity.heated().getAsDouble());
            return cold.equals(heated) ? words.say("ph.estimate-same", cold)
                    : words.say("ph.estimate", cold, heated);
        }
        return acidity.why().map(why -> words.say("unknown.why", words.say("ph-why." + why.kind().word(),
                why.called().orElse("")))).orElseGet(() -> words.say("table.unknown"));
    }

    private Optional<String> apart(OptionalDouble cold, Bath.Ph measured) {
        if (cold.isEmpty()) {
            return Optional.empty();
        }
        boolean meter = measured.with().map(Noted::value).filter(Bath.PhTool.METER::equals).isPresent();
        double off = measured.reads().value() - cold.getAsDouble();
        return StrictMath.abs(off) > (meter ? OFF_BY_METER : OFF_BY_STRIP)
                ? Optional.of(words.say(off > 0 ? "ph.beside-higher" : "ph.beside-lower", figure(StrictMath.abs(off))))
                : Optional.empty();
    }

    /** To a tenth: an estimate shows no more. */
    private static String figure(double ph) {
        return Figures.fixed(ph, 1);
    }
}
