package fascicle.workings;

import fascicle.notebook.Method;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The figures of one method, at the weight its amounts are for.
 *
 * @param method the method
 * @param grams the weight of dry needles its amounts are for
 * @param bath its dyebath
 * @param pot the bath in its vessel
 * @param presoak the bin before
 * @param before treatments before the bath
 * @param after treatments after the bath
 * @param finish what the needles are finished with
 * @param heat its heating
 */
public record MethodWorking(Method method, OptionalDouble grams, BathFigures bath, PotFigures pot,
        Optional<SoakFigures> presoak,
        List<SoakFigures> before, List<SoakFigures> after, List<PartFigures> finish, HeatFigures heat) {}
