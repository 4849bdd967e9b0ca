package fascicle.cli;

import fascicle.notebook.Bath;
import fascicle.notebook.Entry;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.notebook.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes an entry to fill in. A key without a value is a gap: it counts as left out until it is filled. */
final class Slip {

    private final StringBuilder text = new StringBuilder();

    private Slip() {}

    /**
     * An entry's text.
     *
     * @param method the method it follows
     * @param lot its needle lot
     * @param like the entry whose recipe it takes over
     * @param pots how many pots
     */
    static String text(Optional<String> method, Optional<String> lot, Optional<Entry> like, int pots) {
        Slip slip = new Slip();
        slip.line("---");
        if (pots == 1) {
            slip.line("title:");
            slip.line("tag:");
        }
        slip.line("method:" + method.map(id -> " " + quoted(id)).orElse(""));
        slip.line("needles:");
        slip.line("  lot:" + lot.map(id -> " " + quoted(id)).orElse(""));
        if (pots == 1) {
            slip.line("  weight:");
        }
        like.ifPresent(entry -> slip.recipe(entry.recipe()));
        if (like.isEmpty()) {
            slip.line("# bath:");
            slip.line("#   dye: [{is: , amount: }]");
        }
        if (pots == 1) {
            slip.line("# colour: [{hex: \"#\"}]");
            slip.line("outcome:");
            slip.outcome("  ");
        } else {
            slip.pots(pots);
        }
        slip.line("---");
        slip.line("");
        for (int pot = 1; pots > 1 && pot <= pots; pot++) {
            slip.line("## pot-" + pot);
            slip.line("");
        }
        return slip.text.toString();
    }

    private void pots(int pots) {
        line("pots:");
        for (int pot = 1; pot <= pots; pot++) {
            line("  - name: pot-" + pot);
            line("    title:");
            line("    tag:");
            line("    needles: {weight: }");
            line("#   bath: {dye: [{is: , amount: }]}");
            line("#   colour: [{hex: \"#\"}]");
            line("    outcome:");
            outcome("      ");
        }
    }

    private void outcome(String indent) {
        line(indent + "verdict:      # worked, partly or failed");
        line(indent + "evenness:     # 1 to 5");
        line(indent + "feel:         # supple, stiff or brittle");
    }

    /** What the model itself said; what its method says will come from the method again. */
    private void recipe(Recipe recipe) {
        recipe.presoak().filter(presoak -> isOwn(presoak.origin())).ifPresent(presoak -> {
            line("presoak:");
            written("  water", presoak.water());
            parts("  with", presoak.with());
            written("  for", presoak.time());
        });
        treatments("before", recipe.before());
        bath(recipe.bath());
        heat(recipe.heat());
        written("cool", recipe.cool());
        treatments("after", recipe.after());
        written("dry", recipe.dry());
        written("rinse", recipe.rinse());
        parts("finish", recipe.finish());
    }

    private void bath(Bath bath) {
        int before = text.length();
        line("bath:");
        int headed = text.length();
        written("  vessel", bath.vessel());
        bath.water().ifPresent(water -> written("  " + key(water.value()), Optional.of(water)));
        written("  from", bath.from());
        parts("  dye", bath.dye());
        parts("  assistants", bath.assistants());
        if (text.length() == headed) {
            text.setLength(before);
        }
    }

    private static String key(Water water) {
        if (water instanceof Water.ByRatio) {
            return "ratio";
        }
        return water instanceof Water.ByDepth ? "depth" : "water";
    }

    private void treatments(String key, List<Recipe.Treatment> treatments) {
        List<Recipe.Treatment> own = treatments.stream().filter(treatment -> isOwn(treatment.origin())).toList();
        if (!own.isEmpty()) {
            line(key + ":");
            for (Recipe.Treatment treatment : own) {
                List<String> keys = new ArrayList<>();
                treatment.as().ifPresent(as -> keys.add("as: " + quoted(as.written())));
                treatment.water().ifPresent(water -> keys.add("water: " + quoted(water.written())));
                if (!treatment.with().isEmpty()) {
                    keys.add("with: [" + inOneLine(treatment.with()) + "]");
                }
                if (!treatment.heat().isEmpty()) {
                    keys.add("heat: [" + treatment.heat().stream().map(Slip::step)
                            .collect(Collectors.joining(", ")) + "]");
                }
                line("  - {" + String.join(", ", keys) + "}");
            }
        }
    }

    private void heat(List<HeatStep> steps) {
        boolean own = steps.stream().flatMap(step -> step.to().stream()).anyMatch(to -> isOwn(to.origin()));
        if (own) {
            line("heat: [" + steps.stream().map(Slip::step).collect(Collectors.joining(", ")) + "]");
        }
    }

    private static String step(HeatStep step) {
        List<String> keys = new ArrayList<>();
        step.from().ifPresent(from -> keys.add("from: " + quoted(from.written())));
        step.to().ifPresent(to -> keys.add("to: " + quoted(to.written())));
        step.over().ifPresent(over -> keys.add("over: " + quoted(over.written())));
        step.hold().ifPresent(hold -> keys.add("hold: " + quoted(hold.written())));
        step.on().ifPresent(on -> keys.add("on: " + quoted(on.written())));
        return "{" + String.join(", ", keys) + "}";
    }

    private void parts(String key, List<Part> parts) {
        if (parts.stream().anyMatch(part -> isOwn(part.is().origin()))) {
            line(key + ": [" + inOneLine(parts) + "]");
        }
    }

    private static String inOneLine(List<Part> parts) {
        return parts.stream().map(Slip::part).collect(Collectors.joining(", "));
    }

    private static String part(Part part) {
        List<String> keys = new ArrayList<>();
        keys.add("is: " + quoted(part.is().written()));
        part.amount().ifPresent(amount -> keys.add("amount: " + quoted(amount.written())));
        part.by().ifPresent(by -> keys.add("by: " + by.written()));
        part.at().ifPresent(at -> keys.add("at: " + quoted(at.written())));
        return "{" + String.join(", ", keys) + "}";
    }

    private <T> void written(String key, Optional<Noted<T>> noted) {
        noted.filter(found -> isOwn(found.origin())).ifPresent(found -> line(key + ": " + quoted(found.written())));
    }

    private static boolean isOwn(Origin origin) {
        return !(origin instanceof Origin.Method);
    }

    private static String quoted(String value) {
        boolean plain = value.matches("[\\p{L}\\p{N}½¼¾][\\p{L}\\p{N}½¼¾ ./%°~-]*");
        return plain ? value : "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
