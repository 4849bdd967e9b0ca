package fascicle.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What was measured on a notebook of one size.
 *
 * @param entries how many entries it has
 * @param timings the runs, floors first
 * @param over    the name of the timing that is compared with a floor, and {@code under} that floor's; both empty where
 *                the generator did not publish
 * @param remark  what the reader has to know, or empty
 */
record Measurement(int entries, List<Timing> timings, String over, String under, String remark) {

    /** The table as plain text. */
    String table() {
        StringBuilder table = new StringBuilder(String.format(Locale.ROOT, "%d entries%n  %-42s %8s %8s %8s  %7s%n",
                entries, "seconds on the wall, whole processes", "min", "median", "max", "peak MB"));
        timings.forEach(timing -> table.append(timing.line()).append(System.lineSeparator()));
        List<Double> ratios = ratios();
        if (!ratios.isEmpty()) {
            table.append(String.format(Locale.ROOT, "  %s / %s, pair by pair: %.2f to %.2f, median %.2f%n", over, under,
                    ratios.stream().min(Double::compare).orElseThrow(), ratios.stream().max(Double::compare).orElseThrow(), median(ratios)));
        }
        if (!remark.isEmpty()) {
            table.append("  ").append(remark).append(System.lineSeparator());
        }
        return table.toString();
    }

    /** The same as data. */
    Map<String, Object> data() {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("entries", entries);
        data.put("timings", timings.stream().map(Measurement::data).toList());
        if (!ratios().isEmpty()) {
            data.put("ratio", Map.of("median", median(ratios()), "pairs", ratios()));
        }
        data.put("remark", remark);
        return data;
    }

    private static Map<String, Object> data(Timing timing) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("name", timing.name());
        data.put("min_s", timing.min());
        data.put("median_s", timing.median());
        data.put("max_s", timing.max());
        data.put("peak_kb", timing.peakKb() == 0 ? null : timing.peakKb());
        data.put("rounds_s", timing.runs().stream().map(Run::seconds).toList());
        return data;
    }

    private List<Double> ratios() {
        return over.isEmpty() ? List.of() : named(over).ratios(named(under));
    }

    private Timing named(String name) {
        return timings.stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    private static double median(List<Double> figures) {
        return Timing.median(figures.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
