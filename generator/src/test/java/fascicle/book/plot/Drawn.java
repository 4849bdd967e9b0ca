package fascicle.book.plot;

import fascicle.book.page.Markup;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/** A plot read back. */
record Drawn(Element svg) {

    private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");

    static Drawn of(Markup markup) {
        return new Drawn(Jsoup.parseBodyFragment(markup.html()).body().child(0));
    }

    /** A place on the board. */
    record Place(double x, double y) {}

    /** Foot and tip of the needle with this title, or of the needle that has no title, by its colour. */
    List<Place> needle(String title) {
        Element path = svg.select(".needles > *").stream().filter(one -> one.select("title").text().equals(title))
                .map(one -> one.expectFirst("path")).findFirst()
                .orElseGet(() -> svg.expectFirst(".needles > path[fill=" + title + "]"));
        List<Double> numbers = NUMBER.matcher(path.attr("d")).results()
                .map(found -> Double.valueOf(found.group())).toList();
        // M foot-left Q belly tip Q belly foot-right z
        return List.of(new Place((numbers.get(0) + numbers.get(8)) / 2, (numbers.get(1) + numbers.get(9)) / 2),
                new Place(numbers.get(4), numbers.get(5)));
    }

    Place foot(String title) {
        return needle(title).get(0);
    }

    double length(String title) {
        List<Place> ends = needle(title);
        return StrictMath.hypot(ends.get(0).x() - ends.get(1).x(), ends.get(0).y() - ends.get(1).y());
    }
}
