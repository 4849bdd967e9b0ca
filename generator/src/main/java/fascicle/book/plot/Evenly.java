package fascicle.book.plot;

import java.util.List;
import java.util.stream.IntStream;

/** Some of many: as many as a drawing has room for, spread over all of them. */
final class Evenly {

    private Evenly() {}

    /** At most so many, the first and the last among them; two at least. */
    static <T> List<T> spread(List<T> all, int most) {
        if (all.size() <= most) {
            return List.copyOf(all);
        }
        return IntStream.range(0, most).mapToObj(place -> all.get((int) ((long) place * (all.size() - 1) / (most - 1))))
                .toList();
    }
}
