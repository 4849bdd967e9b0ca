package fascicle.book.compose;

import fascicle.notebook.Recipe;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.HeatFigures;
import fascicle.workings.MethodWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.SoakFigures;
import java.util.List;
import java.util.Optional;

/**
 * A recipe with its figures, be it an entry's or a method's.
 *
 * @param recipe what was done
 * @param bath its dyebath
 * @param presoak the bin before
 * @param before treatments before the bath
 * @param after treatments after the bath
 * @param finish what the needles are finished with
 * @param heat its heating
 */
record Worked(Recipe recipe, BathFigures bath, Optional<SoakFigures> presoak, List<SoakFigures> before,
        List<SoakFigures> after, List<PartFigures> finish, HeatFigures heat) {

    static Worked of(EntryWorking entry) {
        return new Worked(entry.entry().recipe(), entry.bath(), entry.presoak(), entry.before(), entry.after(),
                entry.finish(), entry.heat());
    }

    static Worked of(MethodWorking method) {
        return new Worked(method.method().recipe(), method.bath(), method.presoak(), method.before(), method.after(),
                method.finish(), method.heat());
    }
}
