package fascicle.bath;

import fascicle.colour.LinearRgb;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How much of its dye a bath gave up, by Beer and Lambert's law (IUPAC Gold Book): A = −log₁₀(I/I₀) is in proportion to
 * the dye in the glass. It is exhaustion (E = 1 − Aₜ/A₀), not fixation: what rinsing takes back is counted as taken up.
 *
 * @param percent the share that was taken up; nothing where only a range is known, or not even that
 * @param low the least it may be, per cent
 * @param high the most it may be, per cent
 * @param why what keeps it from being known
 */
public record Uptake(OptionalDouble percent, OptionalDouble low, OptionalDouble high, Optional<Why> why) {

    /** What keeps an uptake from being known. */
    public enum Why {
        /** A glass of the bath before or after is missing, or was judged by eye. */
        NO_GLASSES,
        /** The first glass is too dark to tell by. */
        TOO_DARK,
        /** The first glass is too pale to tell by. */
        TOO_PALE,
        /** The glass of plain water is darker than that of the bath. */
        DARK_PLAIN_WATER,
        /** The bath has more colour than before. */
        DARKER,
        /** No glass of plain water: a range only. */
        NO_PLAIN_WATER,
        /** The liquor, or what was left of it, is unknown: a range only. */
        NO_VOLUMES
    }

    /** Between these a glass is neither too pale nor too dark to tell by ({@code common practice, no source}). */
    private static final double PALEST = 0.2;
    private static final double DARKEST = 1;

    private static final double WHITE = 1;

    /**
     * What was seen in glasses of one thickness, in one light.
     *
     * @param plain plain water
     * @param before the bath before the needles
     * @param after the bath after them
     * @param dilutedBefore how many times the first was diluted; 1 for not at all
     * @param dilutedAfter how many times the second was
     * @param error of each intensity, as a share of it
     */
    public record Glasses(Optional<LinearRgb> plain, LinearRgb before, LinearRgb after, double dilutedBefore,
            double dilutedAfter, double error) {}

    /** One channel of the three glasses. */
    private record Channel(double plain, double before, double after) {

        double first() {
            return absorbance(before);
        }

        /** No less than nothing: a glass a trifle lighter than plain water is clear. */
        double last() {
            return StrictMath.max(0, absorbance(after));
        }

        private double absorbance(double intensity) {
            return intensity > 0 ? StrictMath.log10(plain / intensity) : Double.POSITIVE_INFINITY;
        }

        boolean tells() {
            return first() >= PALEST && first() <= DARKEST;
        }
    }

    /**
     * An uptake that nobody can tell.
     *
     * @param why what is missing
     * @return neither share nor range
     */
    public static Uptake unknown(Why why) {
        return new Uptake(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.of(why));
    }

    /**
     * The uptake: 1 − A₁V₁d₁/(A₀V₀d₀).
     *
     * @param glasses what was seen
     * @param liquor V₀, mL
     * @param left V₁, mL
     * @return the share, or a range: without the volumes as if nothing had boiled off, without plain water between a
     *     last glass as clear as water and water as bright as white
     */
    public static Uptake of(Glasses glasses, OptionalDouble liquor, OptionalDouble left) {
        Optional<Channel> chosen = channels(glasses).stream().filter(Channel::tells)
                .reduce((one, other) -> other.first() > one.first() ? other : one);
        if (chosen.isEmpty()) {
            if (glasses.plain().filter(plain -> isDarker(plain, glasses.before(), glasses.error())).isPresent()) {
                return unknown(Why.DARK_PLAIN_WATER);
            }
            boolean dark = channels(glasses).stream().anyMatch(channel -> channel.first() > DARKEST);
            return unknown(dark ? Why.TOO_DARK : Why.TOO_PALE);
        }
        Channel channel = chosen.get();
        boolean volumes = liquor.isPresent() && left.isPresent() && liquor.getAsDouble() > 0;
        double thinned = glasses.dilutedAfter() / glasses.dilutedBefore()
                * (volumes ? left.getAsDouble() / liquor.getAsDouble() : 1);
        double remaining = channel.last() / channel.first() * thinned;
        if (glasses.plain().isEmpty()) {
            boolean darker = remaining > 1 && channel.after() < channel.before();
            return darker ? unknown(volumes ? Why.DARKER : Why.NO_VOLUMES)
                    : between(1 - remaining, Why.NO_PLAIN_WATER);
        }
        double margin = margin(channel, glasses.error()) * thinned;
        if (!volumes) {
            return remaining > 1 ? unknown(Why.NO_VOLUMES) : between(1 - remaining - margin, Why.NO_VOLUMES);
        }
        return remaining > 1 ? unknown(Why.DARKER) : new Uptake(percent(1 - remaining),
                percent(1 - remaining - margin), percent(1 - remaining + margin), Optional.empty());
    }

    /** Whether a glass lets less light of every kind through than another, and of some less than errors may tell. */
    private static boolean isDarker(LinearRgb glass, LinearRgb other, double error) {
        double[] light = {glass.red(), glass.green(), glass.blue()};
        double[] others = {other.red(), other.green(), other.blue()};
        return IntStream.range(0, light.length).allMatch(i -> light[i] <= others[i])
                && IntStream.range(0, light.length).anyMatch(i -> light[i] * (1 + error) < others[i] * (1 - error));
    }

    /** Without plain water, as if it were as bright as white: then the last glass holds the most it can. */
    private static List<Channel> channels(Glasses glasses) {
        LinearRgb plain = glasses.plain().orElse(new LinearRgb(WHITE, WHITE, WHITE));
        LinearRgb before = glasses.before();
        LinearRgb after = glasses.after();
        return Stream.of(new Channel(plain.red(), before.red(), after.red()),
                new Channel(plain.green(), before.green(), after.green()),
                new Channel(plain.blue(), before.blue(), after.blue())).filter(channel -> channel.plain() > 0).toList();
    }

    /**
     * How far A₁/A₀ may be off, where each of the three intensities is off by the same share of itself, independently
     * (JCGM 100, 2008). With q = A₁/A₀ it is error/(A₀ ln 10) · √((1 − q)² + 1 + q²).
     */
    private static double margin(Channel channel, double error) {
        double quotient = channel.last() / channel.first();
        double parts = (1 - quotient) * (1 - quotient) + 1 + quotient * quotient;
        return error / (channel.first() * StrictMath.log(10)) * StrictMath.sqrt(parts);
    }

    private static Uptake between(double low, Why why) {
        return new Uptake(OptionalDouble.empty(), percent(low), OptionalDouble.of(100), Optional.of(why));
    }

    private static OptionalDouble percent(double share) {
        return OptionalDouble.of(100 * StrictMath.max(0, StrictMath.min(1, share)));
    }
}
