package fascicle.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * A dye or an assistant of the seeded notebook, and the amounts of it that somebody would write down.
 *
 * @param id   its file's name, for instance {@code brick}
 * @param kind the notebook's word: dye, salt, acid, alkali, mordant, wetting, other
 * @param type of a dye: acid, basic, natural …; of an acid: acetic or citric; of anything else {@code -}
 * @param form powder, liquid, crystals or plant
 */
record Supply(String id, String kind, String type, String form) {

    /** All of them: 36 dyes and 24 assistants, invented or as common as salt. */
    static final List<Supply> ALL = """
            brick dye basic powder
            ochre dye acid powder
            moss dye acid powder
            rust dye direct powder
            plum dye acid powder
            slate dye union powder
            teal dye acid powder
            saffron dye basic powder
            claret dye basic powder
            fern dye union powder
            bark-brown dye direct powder
            charcoal dye union powder
            straw dye acid powder
            heather dye basic powder
            lichen dye disperse powder
            dusk dye disperse powder
            clay dye direct powder
            ember dye acid powder
            lake-blue dye reactive powder
            night dye reactive powder
            marigold dye union powder
            copper-red dye union powder
            sea-green dye acid liquid
            ink dye direct liquid
            rose dye reactive liquid
            amber dye unknown liquid
            violet-grain dye basic crystals
            leaf-grain dye basic crystals
            walnut-hull dye natural plant
            madder-root dye natural plant
            onion-skin dye natural plant
            goldenrod dye natural plant
            oak-gall dye natural plant
            alder-bark dye natural plant
            weld dye natural plant
            indigo dye vat powder
            table-salt salt - crystals
            sea-salt salt - crystals
            glauber-salt salt - crystals
            white-vinegar acid acetic liquid
            cider-vinegar acid acetic liquid
            strong-vinegar acid acetic liquid
            citric-acid acid citric crystals
            lemon-juice acid citric liquid
            baking-soda alkali - powder
            washing-soda alkali - powder
            slaked-lime alkali - powder
            ash-lye alkali - liquid
            alum mordant - crystals
            iron-sulphate mordant - crystals
            rust-water mordant - liquid
            tannin mordant - powder
            wetting-agent wetting - liquid
            dish-soap wetting - liquid
            soap-flakes wetting - powder
            glycerin other - liquid
            wheat-bran other - powder
            cream-of-tartar other - powder
            chalk other - powder
            starch other - powder
            """.lines().map(Supply::of).toList();

    /** The supplies of one kind. */
    static List<Supply> ofKind(String kind) {
        return ALL.stream().filter(s -> s.kind.equals(kind)).toList();
    }

    private static Supply of(String line) {
        String[] cell = line.split(" ");
        return new Supply(cell[0], cell[1], cell[2], cell[3]);
    }

    /** The id in words: {@code lake-blue} is Lake blue. */
    String title() {
        return Character.toUpperCase(id.charAt(0)) + id.substring(1).replace('-', ' ');
    }

    /** An amount for some 50 g of needles in some 3 L, as a maker writes it. */
    String amount(Chance chance) {
        String about = chance.oneIn(12) ? "about " : "";
        return about + switch (kind) {
            case "dye" -> switch (form) {
                case "liquid" -> chance.between(3, 25) + " mL";
                case "plant" -> chance.oneIn(2) ? chance.between(6, 30) * 10 + " g" : chance.between(10, 40) * 10 + " % owf";
                default -> switch (chance.between(0, 5)) {
                    case 0 -> chance.tenths(3, 25) + " g";
                    case 1 -> chance.oneOf("1/4", "1/2", "¾", "1") + " tsp";
                    default -> chance.tenths(3, 40) + " % owf";
                };
            };
            case "salt" -> chance.oneOf("10 g", "25 g", "40 g", "1 tbsp", "2 tbsp", "5 g/L");
            case "acid" -> form.equals("liquid") ? chance.oneOf("20 mL", "40 mL", "60 mL", "1/4 cup", "2 tbsp") : chance.between(2, 12) + " g";
            case "mordant" -> form.equals("liquid") ? chance.between(2, 8) * 10 + " mL" : chance.between(2, 12) + " % owf";
            case "wetting" -> form.equals("liquid") ? chance.oneOf("1 tsp", "5 mL", "20 drops") : chance.between(2, 6) + " g";
            default -> form.equals("liquid") ? chance.between(2, 10) * 10 + " mL" : chance.between(2, 12) + " g";
        };
    }

    /** A part of a bath in one line, for instance {@code {is: brick, amount: 1.5 % owf}}. */
    String part(Chance chance) {
        return "{is: " + id + ", amount: " + amount(chance) + "}";
    }

    /** Its file under {@code dyes/}; {@code packs} were bought, which should outlast the notebook. */
    String file(Chance chance, Vocabulary vocabulary, int packs, String boughtOn) {
        List<String> lines = new ArrayList<>();
        lines.add("title: " + title());
        lines.add("kind: " + kind);
        if (kind.equals("dye")) {
            lines.add("type: " + type);
        }
        lines.add("form: " + form);
        if (kind.equals("acid")) {
            lines.add("acid: " + type);
            if (form.equals("liquid")) {
                lines.add("acidity: " + chance.oneOf("5", "6", "10") + " %");
            }
        }
        switch (form) {
            case "powder", "crystals" -> lines.add("level-tsp: {weight: " + chance.tenths(22, 55) + " g, weighed: " + chance.between(3, 12) + "}");
            case "liquid" -> lines.add("density: 1.0" + chance.between(0, 5) + " g/mL");
            default -> { }
        }
        String holds = form.equals("liquid") ? "1 L" : kind.equals("dye") && !form.equals("plant") ? "50 g" : "1 kg";
        lines.add("pack: {holds: " + holds + ", price: " + chance.between(2, 9) + "." + chance.between(10, 99) + "}");
        lines.add("bought: [{on: " + boughtOn + ", packs: " + packs + "}]");
        if (kind.equals("dye") && form.equals("powder")) {
            lines.add("cautions: [dust, stains]");
        }
        if (chance.oneIn(3)) {
            lines.add("share: " + chance.oneOf("students", "open"));
        }
        return MarkdownFile.of(lines, vocabulary.paragraph(chance));
    }
}
