package fascicle.cli;

import fascicle.colour.Lab;
import fascicle.photo.Area;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of things of known colour that were photographed: where each lies in which picture, and its Lab under D50.
 */
final class KnownThings {

    private static final List<String> WANTED = List.of("x", "y", "width", "height", "L", "a", "b");
    private static final String HEADING = "photo,x,y,width,height,L,a,b";

    private final Path table;
    private final Optional<Path> photo;
    private boolean semicolons;

    private KnownThings(Path table, Optional<Path> photo) {
        this.table = table;
        this.photo = photo;
    }

    /**
     * One thing.
     *
     * @param row its row in the table, from 1
     * @param photo its picture
     * @param at where it lies
     * @param known its colour
     */
    record Thing(long row, Path photo, Area at, Lab known) {

        /** Whether it lies on another area of its picture, in part at least. */
        boolean overlaps(Area other) {
            return at.x() < other.x() + other.width() && other.x() < at.x() + at.width()
                    && at.y() < other.y() + other.height() && other.y() < at.y() + at.height();
        }
    }

    /**
     * Reads a table.
     *
     * @param table a CSV file with the heading {@value #HEADING}
     * @param photo the picture that the call names, for tables that name none
     * @return at least one thing
     * @throws IOException if the disk fails
     */
    static List<Thing> read(Path table, Optional<Path> photo) throws IOException {
        return new KnownThings(table, photo).things();
    }

    private List<Thing> things() throws IOException {
        String text = text();
        semicolons = text.lines().findFirst().orElse("").contains(";");
        CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(semicolons ? ";" : ",")
                .setHeader().setSkipHeaderRecord(true).setIgnoreHeaderCase(true)
                .setIgnoreSurroundingSpaces(true).setIgnoreEmptyLines(true).get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            List<String> lacking = WANTED.stream().filter(column -> !parser.getHeaderMap().containsKey(column))
                    .toList();
            if (!lacking.isEmpty()) {
                throw wrong("lacks the column " + lacking.get(0) + "; its first line is " + HEADING);
            }
            if (photo.isEmpty() && !parser.getHeaderMap().containsKey("photo")) {
                throw wrong("names no photographs; name one in the call, or in a column photo");
            }
            List<Thing> things = parser.stream().map(this::thing).toList();
            if (things.isEmpty()) {
                throw wrong("names no things; below its first line stands a row for each");
            }
            return things;
        } catch (IllegalArgumentException | UncheckedIOException | IOException torn) {
            // Of a text in memory only its form can be wrong.
            throw wrong("has a quote that opens and does not close, or a line that cannot be read; its first line is "
                    + HEADING);
        }
    }

    private String text() throws IOException {
        if (!Files.isRegularFile(table)) {
            throw wrong("is not there; name the table of things of known colour after --known");
        }
        try {
            return Files.readString(table).replace("\uFEFF", "");
        } catch (MalformedInputException notText) {
            throw wrong("is not UTF-8 text; save it as CSV with the encoding UTF-8");
        }
    }

    private Thing thing(CSVRecord row) {
        Path picture = row.isMapped("photo") && row.isSet("photo") && !row.get("photo").isBlank()
                ? table.resolveSibling(row.get("photo")) : photo.orElseThrow(() -> inRow(row, "names no photograph"));
        double lightness = number(row, "L");
        if (lightness < 0 || lightness > 100) {
            throw inRow(row, "has the lightness " + row.get("L") + "; expected is one from 0 to 100");
        }
        try {
            return new Thing(row.getRecordNumber(), picture, new Area(number(row, "x"), number(row, "y"),
                    number(row, "width"), number(row, "height")),
                    new Lab(lightness, number(row, "a"), number(row, "b")));
        } catch (IllegalArgumentException outside) {
            throw inRow(row, "names an area that does not lie in the picture; x and width together are at most 100, y "
                    + "and height too");
        }
    }

    private double number(CSVRecord row, String column) {
        String cell = row.isSet(column) ? row.get(column).replace('\u2212', '-') : "";
        String written = semicolons ? cell.replace(',', '.') : cell;
        if (!written.matches("[-+]?[0-9]{1,3}(\\.[0-9]+)?")) {
            throw inRow(row, "has “" + written + "” under " + column + "; expected is a number, such as 36.2");
        }
        return Double.parseDouble(written);
    }

    private WrongCall inRow(CSVRecord row, String what) {
        return wrong("in row " + row.getRecordNumber() + " " + what);
    }

    private WrongCall wrong(String what) {
        return new WrongCall("The table “" + table + "” " + what + ".");
    }
}
