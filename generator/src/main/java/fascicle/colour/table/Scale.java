package fascicle.colour.table;

import fascicle.colour.table.Columns.Choice;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Which figure of a table stands for all of the light.
 *
 * <p>A column's name may say so: {@code R (0-1)}, {@code Y (0-100)}, {@code 400 nm (%)}. Else it is decided from the
 * whole table and for all of it at once:
 *
 * <ul>
 *   <li>a spectrum is in per cent if any figure exceeds 2, else in factors;
 *   <li>X, Y and Z count to 100, and sRGB to 255;
 *   <li>figures that look as if they counted to 1, or fractions of sRGB none of which exceeds 100, are not guessed at:
 *       a table taken for another scale would give colours that look sound and are wrong.
 * </ul>
 */
final class Scale {

    private Scale() {}

    /** The figure that stands for all of the light; 1 for Lab, which has none. */
    static double of(Choice choice, List<double[]> figures, int line) throws UnreadableTable {
        OptionalDouble said = said(choice, line);
        if (said.isPresent()) {
            return said.getAsDouble();
        }
        double most = figures.stream()
                .mapToDouble(row -> choice.family() == Family.XYZ ? row[1] : most(row))
                .max()
                .orElse(0);
        return switch (choice.family()) {
            case SPECTRUM -> most > 2 ? 100 : 1;
            case XYZ -> {
                if (most <= 1) {
                    throw unsaid(choice, 1, "100", line);
                }
                yield 100;
            }
            case RGB -> {
                boolean whole = figures.stream().allMatch(Scale::whole);
                if (most <= 100 && !whole) {
                    throw unsaid(choice, most <= 1 ? 1 : 100, "255", line);
                }
                yield 255;
            }
            default -> 1;
        };
    }

    private static OptionalDouble said(Choice choice, int line) throws UnreadableTable {
        OptionalDouble said = choice.headings().get(0).full();
        for (Heading heading : choice.headings()) {
            if (!heading.full().equals(said)) {
                throw new UnreadableTable(line, "“" + choice.headings().get(0).name() + "” and “" + heading.name()
                        + "” do not count alike; export them to the same scale");
            }
        }
        return said;
    }

    private static UnreadableTable unsaid(Choice choice, int perhaps, String usually, int line) {
        List<String> names = choice.headings().stream().map(heading -> "“" + heading.name() + "”").toList();
        String first = choice.headings().get(0).name();
        // Of X, Y and Z, Y alone tells how light a colour is.
        String told = choice.family() == Family.XYZ
                ? names.get(1)
                : names.get(0) + ", " + names.get(1) + " and " + names.get(2);
        return new UnreadableTable(line, "no figure under " + told + " exceeds " + perhaps
                + ", so that they may run from 0 to " + perhaps + " or from 0 to " + usually + "; say which in their "
                + "names, as in “" + first + " (0-" + perhaps + ")” or “" + first + " (0-" + usually + ")”");
    }

    private static double most(double[] row) {
        double most = Double.NEGATIVE_INFINITY;
        for (double value : row) {
            most = StrictMath.max(most, value);
        }
        return most;
    }

    private static boolean whole(double[] row) {
        for (double value : row) {
            if (value != StrictMath.rint(value)) {
                return false;
            }
        }
        return true;
    }
}
