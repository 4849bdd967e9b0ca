package fascicle.colour.table;

import fascicle.colour.Lab;
import fascicle.colour.LinearRgb;
import fascicle.colour.Reflectance;
import fascicle.colour.Rgb;
import fascicle.colour.table.Columns.Choice;
import fascicle.colour.table.ReadingTable.Kind;
import fascicle.colour.table.ReadingTable.Read;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes colours of the rows of a table.
 *
 * @param sheet the table
 * @param choice the columns to use
 */
record Colouring(Sheet sheet, Choice choice) {

    /** A black or a bright white may lie a hair outside, by noise or by fluorescence. */
    private static final double BELOW_BLACK = -0.5;
    private static final double ABOVE_WHITE = 105;

    private static final double WIDEST = 200;

    /** The readings of the table, in its order. */
    List<Read> reads() throws UnreadableTable {
        List<Read> reads = new ArrayList<>();
        if (choice.family() == Family.HEX) {
            for (Row row : sheet.rows()) {
                reads.add(new Read(code(row), Kind.SCREEN, row.line()));
            }
            return reads;
        }
        List<double[]> figures = new ArrayList<>();
        for (Row row : sheet.rows()) {
            figures.add(sheet.numbers(row, choice.headings()));
        }
        double full = Scale.of(choice, figures, sheet.line());
        for (int i = 0; i < figures.size(); i++) {
            int line = sheet.rows().get(i).line();
            double[] values = figures.get(i);
            reads.add(switch (choice.family()) {
                case LAB -> new Read(lab(values, line), Kind.LAB, line);
                case XYZ -> new Read(xyz(values, full, line), Kind.XYZ, line);
                case RGB -> new Read(screen(values, full, line), Kind.SCREEN, line);
                default -> new Read(spectrum(values, full, line), Kind.SPECTRAL, line);
            });
        }
        return reads;
    }

    private Lab lab(double[] values, int line) throws UnreadableTable {
        hold(values, 0, BELOW_BLACK, ABOVE_WHITE, "lightness runs from 0 to 100", line);
        hold(values, 1, -WIDEST, WIDEST, "no colour lies beyond -200 or 200", line);
        hold(values, 2, -WIDEST, WIDEST, "no colour lies beyond -200 or 200", line);
        Lab lab = choice.viewing().isD65()
                ? Lab.ofD65(values[0], values[1], values[2])
                : new Lab(values[0], values[1], values[2]);
        return settled(lab);
    }

    private Lab xyz(double[] values, double full, int line) throws UnreadableTable {
        for (int i = 0; i < 3; i++) {
            String words = "X, Y and Z run from 0 to about " + Decimals.written(full);
            hold(values, i, -0.005 * full, 1.3 * full, words, line);
        }
        double x = values[0] / full;
        double y = values[1] / full;
        double z = values[2] / full;
        return seen(
                choice.viewing().isD65() ? Lab.ofXyzD65(x, y, z) : Lab.ofXyz(x, y, z),
                "X, Y and Z are no colour of a surface; Y of a perfect white is " + Decimals.written(full),
                line);
    }

    /** Steps between whole ones are kept: they are means of several readings. */
    private Lab screen(double[] values, double full, int line) throws UnreadableTable {
        for (int i = 0; i < 3; i++) {
            hold(values, i, 0, full, "sRGB runs from 0 to " + Decimals.written(full), line);
        }
        return new LinearRgb(
                        LinearRgb.decode(values[0] / full),
                        LinearRgb.decode(values[1] / full),
                        LinearRgb.decode(values[2] / full))
                .toLab();
    }

    private Lab spectrum(double[] values, double full, int line) throws UnreadableTable {
        double[] wavelengths = choice.headings().stream().mapToDouble(Heading::wavelength).toArray();
        double[] factors = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            hold(values, i, -0.05 * full, 2 * full, "of the light that falls on it, a surface reflects 0 to "
                    + Decimals.written(full), line);
            factors[i] = values[i] / full;
        }
        return seen(
                Reflectance.of(wavelengths, factors).toLab(),
                "the spectrum reflects more than a perfect white; if it is in per cent, say so in the names of its "
                        + "columns, as in “400 nm (%)”",
                line);
    }

    private Lab code(Row row) throws UnreadableTable {
        Heading heading = choice.headings().get(0);
        String written = row.cells().get(heading.column());
        return Rgb.read(written)
                .orElseThrow(() -> new UnreadableTable(row.line(), "“" + written + "” under “" + heading.name()
                        + "” is no colour code; write one such as #7f4632"))
                .toLab();
    }

    private void hold(double[] values, int place, double least, double most, String words, int line)
            throws UnreadableTable {
        if (!(values[place] >= least && values[place] <= most)) {
            throw new UnreadableTable(line, "“" + choice.headings().get(place).name() + "” is "
                    + Decimals.written(values[place]) + "; " + words);
        }
    }

    private static Lab seen(Lab lab, String otherwise, int line) throws UnreadableTable {
        if (lab.lightness() < BELOW_BLACK
                || lab.lightness() > ABOVE_WHITE
                || StrictMath.abs(lab.a()) > WIDEST
                || StrictMath.abs(lab.b()) > WIDEST) {
            throw new UnreadableTable(line, otherwise);
        }
        return settled(lab);
    }

    /** Lightness held to 0 and 100, as a notebook may write it. */
    private static Lab settled(Lab lab) {
        return new Lab(StrictMath.max(0, StrictMath.min(100, lab.lightness())), lab.a(), lab.b());
    }
}
