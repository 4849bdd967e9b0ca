package fascicle.workings;

import fascicle.colour.Grade;
import fascicle.colour.GreyScale;
import fascicle.notebook.Fastness;
import java.util.List;
import java.util.Optional;

/**
 * How a colour rubs off.
 *
 * @param grade of the stain; nothing where the cloth's colours may not be compared
 * @param read how far the cloth has changed, where it was read; its grade is then after ISO 105-A04, approximate
 */
public record RubFigures(Optional<Grade> grade, Optional<Difference> read) {

    /**
     * The figures of a rub test.
     *
     * @param rub the maker's grade, or the cloth before and after
     * @return its figures
     */
    public static RubFigures of(Fastness.Rub rub) {
        if (rub instanceof Fastness.Rub.Graded graded) {
            return new RubFigures(Optional.of(graded.grade().value()), Optional.empty());
        }
        Fastness.Rub.Cloth cloth = (Fastness.Rub.Cloth) rub;
        Optional<Difference.Sure> before = Colours.sure(List.of(cloth.before()));
        Optional<Difference.Sure> after = Colours.sure(List.of(cloth.after()));
        return new RubFigures(before.flatMap(white -> after.map(stained ->
                        GreyScale.staining(white.lab(), stained.lab()))),
                before.flatMap(white -> after.map(stained -> Difference.of(white, stained))));
    }
}
