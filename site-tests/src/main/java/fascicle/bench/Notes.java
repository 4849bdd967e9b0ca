package fascicle.bench;

import java.util.List;

/** The body of an entry: some 1.9 KB of paragraphs, with a list, a table, a link or a closed section in some. */
final class Notes {

    private Notes() {
    }

    /**
     * Writes a body.
     *
     * @param level   how deep its headings stand, from 2
     * @param earlier files of the notebook that a link may lead to, as addresses from an entry's folder
     */
    static String draw(Chance chance, Vocabulary vocabulary, int level, List<String> earlier) {
        StringBuilder body = new StringBuilder();
        int length = chance.between(1400, 2100);
        while (body.length() < length) {
            switch (chance.between(0, 14)) {
                case 0 -> heading(body, chance, vocabulary, level, "");
                case 1 -> list(body, chance, vocabulary);
                case 2 -> table(body, chance, vocabulary);
                case 3 -> body.append("The [").append(vocabulary.words(chance, 2)).append("](")
                        .append(earlier.isEmpty() || chance.oneIn(4) ? "https://example.org/" + vocabulary.word(chance) : chance.pick(earlier))
                        .append(") says *").append(vocabulary.words(chance, 4)).append("*. ");
                default -> { }
            }
            body.append(vocabulary.paragraph(chance)).append("\n\n");
        }
        if (chance.oneIn(12)) {
            heading(body, chance, vocabulary, level, " (studio only)");
            body.append(vocabulary.paragraph(chance)).append("\n\n");
        }
        return body.toString();
    }

    private static void heading(StringBuilder body, Chance chance, Vocabulary vocabulary, int level, String mark) {
        body.append("#".repeat(level)).append(" On ").append(vocabulary.words(chance, 2)).append(mark).append("\n\n");
    }

    private static void list(StringBuilder body, Chance chance, Vocabulary vocabulary) {
        for (int item = chance.between(2, 5); item > 0; item--) {
            body.append("- ").append(vocabulary.sentence(chance)).append('\n');
        }
        body.append('\n');
    }

    private static void table(StringBuilder body, Chance chance, Vocabulary vocabulary) {
        body.append("| minute | °C | seen |\n|---:|---:|---|\n");
        int rows = chance.between(3, 5);
        for (int row = 1; row <= rows; row++) {
            body.append("| ").append(row * 15).append(" | ").append(chance.between(40, 92)).append(" | ")
                    .append(vocabulary.words(chance, 3)).append(" |\n");
        }
        body.append('\n');
    }
}
