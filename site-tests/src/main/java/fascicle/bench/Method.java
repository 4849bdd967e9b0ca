package fascicle.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * A method of the seeded notebook.
 *
 * @param id      its file's name
 * @param follows the id of the method that it follows, or {@code -}
 * @param share   the edition it is for
 */
record Method(String id, String follows, String share) {

    static final List<Method> ALL = """
            slow-simmer - open
            low-water-simmer slow-simmer students
            steam-and-rest - students
            salt-bath slow-simmer studio
            vinegar-bath slow-simmer open
            two-dye-dip vinegar-bath studio
            long-soak - open
            iron-after long-soak studio
            alum-first - students
            plant-simmer alum-first open
            quick-pot - students
            wide-pan-low-water low-water-simmer studio
            """.lines().map(Method::of).toList();

    private static Method of(String line) {
        String[] cell = line.split(" ");
        return new Method(cell[0], cell[1], cell[2]);
    }

    private String title() {
        return Character.toUpperCase(id.charAt(0)) + id.substring(1).replace('-', ' ');
    }

    /** Its file under {@code methods/}. One that follows another says only what is different. */
    String file(Chance chance, Vocabulary vocabulary) {
        List<String> lines = new ArrayList<>();
        lines.add("title: " + title());
        lines.add("for: 50 g");
        lines.add("skill: " + chance.oneOf("first", "some", "sure"));
        if (follows.equals("-")) {
            lines.add("presoak: {water: 4 L, with: [{is: wetting-agent, amount: 1 tsp}], for: " + chance.oneOf("30 min", "1 h", "overnight") + "}");
        } else {
            lines.add("method: " + follows);
        }
        switch (id) {
            case "alum-first" -> lines.add("before: [{as: mordant, water: 3 L, with: [{is: alum, amount: 10 % owf}], heat: [{to: 80 °C, hold: 1 h}]}]");
            case "iron-after" -> lines.add("after: [{as: iron, water: 2 L, with: [{is: iron-sulphate, amount: 2 % owf}]}]");
            default -> { }
        }
        lines.add("bath:");
        lines.add("  vessel: " + chance.pick(Vessels.IDS));
        lines.add("  ratio: " + chance.between(40, 70));
        if (follows.equals("-")) {
            lines.add("  from: tap");
            lines.add("  dye: [" + chance.pick(Supply.ofKind("dye")).part(chance) + "]");
            lines.add("  assistants: [" + chance.pick(Supply.ofKind("salt")).part(chance) + ", "
                    + chance.pick(Supply.ofKind("acid")).part(chance) + "]");
            lines.add("heat: [{to: " + chance.between(80, 92) + " °C, over: 30 min, hold: 1 h}, {to: below-simmer, hold: 30 min}]");
            lines.add("cool: " + chance.oneOf("overnight", "2 h"));
            lines.add("dry: 1 day");
            lines.add("rinse: " + chance.oneOf("after-drying", "before-drying"));
        }
        lines.add("share: " + share);
        StringBuilder body = new StringBuilder(vocabulary.paragraph(chance)).append("\n\n");
        for (int step = 1; step <= 8; step++) {
            body.append(step).append(". ").append(vocabulary.sentence(chance)).append('\n');
        }
        return MarkdownFile.of(lines, body.append('\n').append(vocabulary.paragraph(chance)).toString());
    }
}
