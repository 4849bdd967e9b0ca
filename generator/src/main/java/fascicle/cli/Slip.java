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
import java.util.stream.Stream;

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
     * @param pots the names of the pots; where there is one only, its file names it
     */
    static String text(Optional<String> method, Optional<String> lot, Optional<Entry> like, List<String> pots) {
        boolean alone = pots.size() == 1;
        Slip slip = new Slip();
        slip.line("---");
        if (alone) {
            slip.line("title:");
            slip.line("tag:");
        }
        slip.line("method:" + method.map(id -> " " + quoted(id)).orElse(""));
        slip.line("needles:");
        slip.line("  lot:" + lot.map(id -> " " + quoted(id)).orElse(""));
        if (alone) {
            slip.line("  weight:");
        }
        like.ifPresent(entry -> slip.recipe(entry.recipe()));
        if (like.isEmpty()) {
            slip.line("# bath:");
            slip.line("#   dye: [{is: , amount: }]");
        }
        if (alone) {
            slip.line("# colour: [{hex: \"#\"}]    "
                    + "# or [{photo: {file: , needles: [x, y, w, h], card: {at: [x, y, w, h]}}}]");
            slip.line("outcome:");
            slip.outcome("  ");
        } else {
            slip.pots(pots);
        }
        slip.line("---");
        slip.line("");
        if (!alone) {
            pots.forEach(pot -> slip.line("## " + pot + "\n"));
        }
        return slip.text.toString();
    }

    private void pots(List<String> pots) {
        line("pots:");
        for (String pot : pots) {
            line("  - name: " + pot);
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
        bath.extract().ifPresent(this::extract);
        if (text.length() == headed) {
            text.setLength(before);
        }
    }

    private void extract(Bath.Extract extract) {
        boolean own = Stream.of(extract.of(), extract.state(), extract.water()).flatMap(Optional::stream)
                .anyMatch(noted -> isOwn(noted.origin()));
        if (own) {
            List<String> keys = new ArrayList<>();
            extract.of().ifPresent(of -> keys.add("of: " + quoted(of.written())));
            extract.state().ifPresent(state -> keys.add("state: " + quoted(state.written())));
            extract.water().ifPresent(water -> keys.add("water: " + quoted(water.written())));
            heatKey(extract.heat()).ifPresent(keys::add);
            line("  extract: {" + String.join(", ", keys) + "}");
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
                heatKey(treatment.heat()).ifPresent(keys::add);
                line("  - {" + String.join(", ", keys) + "}");
            }
        }
    }

    private void heat(List<HeatStep> steps) {
        boolean own = steps.stream().flatMap(step -> Stream.of(step.to(), step.from(), step.over(), step.hold()))
                .flatMap(Optional::stream).anyMatch(noted -> isOwn(noted.origin()));
        if (own) {
            heatKey(steps).ifPresent(this::line);
        }
    }

    private static Optional<String> heatKey(List<HeatStep> steps) {
        return steps.isEmpty() ? Optional.empty() : Optional.of("heat: [" + steps.stream().map(Slip::step)
                .collect(Collectors.joining(", ")) + "]");
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
