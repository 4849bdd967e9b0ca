package fascicle.book.compose;

import fascicle.notebook.Recipe;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.HeatFigures;
import fascicle.workings.MethodWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.PotFigures;
import fascicle.workings.SoakFigures;
import fascicle.workings.acidity.Acidities;
import fascicle.workings.acidity.AcidityFigures;
import java.util.List;
import java.util.Optional;

/**
 * A recipe with its figures, be it an entry's or a method's.
 *
 * @param recipe what was done
 * @param bath its dyebath
 * @param pot the bath in its vessel
 * @param presoak the bin before
 * @param before treatments before the bath
 * @param after treatments after the bath
 * @param finish what the needles are finished with
 * @param heat its heating
 * @param acidity how sour the dyebath is
 * @param soaking how sour the bin before is
 */
record Worked(Recipe recipe, BathFigures bath, PotFigures pot, Optional<SoakFigures> presoak, List<SoakFigures> before,
        List<SoakFigures> after, List<PartFigures> finish, HeatFigures heat, AcidityFigures acidity,
        Optional<AcidityFigures> soaking) {

    static Worked of(EntryWorking entry, Acidities acidities) {
        return new Worked(entry.entry().recipe(), entry.bath(), entry.pot(), entry.presoak(), entry.before(),
                entry.after(), entry.finish(), entry.heat(), acidities.bath(entry),
                entry.presoak().map(acidities::presoak));
    }

    static Worked of(MethodWorking method, Acidities acidities) {
        return new Worked(method.method().recipe(), method.bath(), method.pot(), method.presoak(), method.before(),
                method.after(), method.finish(), method.heat(), acidities.bath(method),
                method.presoak().map(acidities::presoak));
    }
}
