package fascicle.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Some thirty thousand words for notes, drawn as often as words are in a language: the word of rank r in proportion to
 * 1/(r + 2.7)^1.25 (Zipf's law as B. Mandelbrot put it, 1953), so that a search finds some words everywhere and most of
 * them hardly anywhere. A word then tells some nine bits, as words of languages do (from memory).
 *
 * <p>The commonest are English and the trade's; the rest are put together from stems and endings and mean nothing.
 */
final class Vocabulary {

    private static final String COMMON = """
            the and of a to in was with it for on after then but at from not more than before still less into again
            needles bath colour pot water dry dark pale warm even left out lid heat rinse green brown red gold slow
            tips sheath bundle salt vinegar window morning evening shade steam stiff supple cold tray paper side
            turned stirred lifted cooled soaked tied wrapped hung faded deeper duller brighter redder cleaner patchy
            basket coil stitch core weave border knot thread raffia sample card swatch daylight cloud porch stove
            pan rim ladle thermometer strip meter scale spoon jar cloth sieve bucket rain well tap season storm
            bark resin wax cone branch ridge lake valley autumn spring summer winter cut gathered sorted trimmed
            brittle sticky mould streak fleck ring tone hue depth cast half third twice double single next last
            """;
    private static final String STEMS = """
            alb arn bel bor bram brin cald carn corl crag dal darn dov drom eld elm fal farn fenn flor gal garn glen
            gorm hald harn hol horn ild jarn kel kern lam larn lin lorn mal marn mel morn nal narn nor orl pal parn
            pel quil ral rarn rin rosk sal sarn sel skar sorn stel tal tarn tel thorn torv ulm val varn vel vorn wal
            warn wel wick wold yarn yel zarn
            """;
    private static final String ENDINGS = """
            a ack age an and ane ant ard ask aw ed een el en er est et ey ick iel ify ile in ine ing ish it le ling
            ness och on ool ough ow ry sel some ster ter ty um und ure wick wort
            """;

    private static final int LONGER_OF_A_STEM = 400;

    private final List<String> words;
    private final double[] reached;

    Vocabulary() {
        List<String> made = new ArrayList<>();
        for (String stem : split(STEMS)) {
            for (String ending : split(ENDINGS)) {
                made.add(stem + ending);
            }
        }
        Collections.shuffle(made, new Random(1));
        List<String> longer = new ArrayList<>();
        for (String stem : split(STEMS)) {
            made.subList(0, LONGER_OF_A_STEM).forEach(word -> longer.add(stem + word));
        }
        Collections.shuffle(longer, new Random(1));
        made.addAll(longer);
        words = new ArrayList<>(split(COMMON));
        words.addAll(made);
        reached = new double[words.size()];
        double sum = 0;
        for (int rank = 1; rank <= reached.length; rank++) {
            sum += StrictMath.pow(rank + 2.7, -1.25);
            reached[rank - 1] = sum;
        }
    }

    /** How many words there are to draw from. */
    int size() {
        return words.size();
    }

    /** One word, a common one likelier than a rare one. */
    String word(Chance chance) {
        double mark = chance.share() * reached[reached.length - 1];
        int found = Arrays.binarySearch(reached, mark);
        return words.get(found < 0 ? -found - 1 : found);
    }

    /** That many words with spaces between. */
    String words(Chance chance, int count) {
        return IntStream.range(0, count).mapToObj(i -> word(chance)).collect(Collectors.joining(" "));
    }

    /** A sentence of 6 to 16 words. */
    String sentence(Chance chance) {
        String words = words(chance, chance.between(6, 16));
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    /** A paragraph of 2 to 5 sentences. */
    String paragraph(Chance chance) {
        return IntStream.range(0, chance.between(2, 5)).mapToObj(i -> sentence(chance))
                .collect(Collectors.joining(" "));
    }

    private static List<String> split(String words) {
        return List.of(words.strip().split("\\s+"));
    }
}
