package fascicle.notebook.read;

import fascicle.notebook.Conditions;
import fascicle.notebook.Cover;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The ids of a notebook: each once in its kind, and every reference to one that is there. */
final class Catalogue {

    private final Findings findings;
    private final Map<String, Map<String, String>> idsOfKind = new HashMap<>();
    private final Map<String, Place> placeOfId = new HashMap<>();
    private final Set<String> forgiven = new HashSet<>();

    Catalogue(Findings findings) {
        this.findings = findings;
    }

    /** Takes an id into the catalogue; says so, and answers false, where it is there already or cannot be one. */
    boolean add(String kind, String id, Place place) {
        Map<String, String> ids = idsOfKind.computeIfAbsent(kind, any -> new LinkedHashMap<>());
        String already = ids.putIfAbsent(Ids.key(id), id);
        if (already != null) {
            findings.error(place, "the id “" + id + "” is used twice: for another " + kind + " it stands in "
                    + placeOfId.get(kind + " " + Ids.key(id)) + " (letter case and ways to write an accent do not "
                    + "count); rename one of them");
            return false;
        }
        placeOfId.put(kind + " " + Ids.key(id), place);
        checkLetters(id, place);
        return true;
    }

    private void checkLetters(String id, Place place) {
        String refused = "\\/:*?\"<>|#%";
        boolean bad = id.isBlank() || !id.equals(id.strip()) || id.startsWith(".") || id.endsWith(".")
                || id.codePoints().anyMatch(letter -> Character.isISOControl(letter)
                        || refused.indexOf(letter) >= 0);
        if (bad) {
            findings.error(place, "the id “" + id + "” cannot name a page; use letters, digits and hyphens");
        }
    }

    /** Lets every reference to a kind pass, because its file could not be read. */
    void forgive(String kind) {
        forgiven.add(kind);
    }

    /** Says so where a reference names nothing. */
    void check(String kind, Optional<Noted<String>> reference) {
        reference.ifPresent(noted -> check(kind, noted));
    }

    private void check(String kind, Noted<String> noted) {
        Map<String, String> ids = idsOfKind.getOrDefault(kind, Map.of());
        if (noted.value().isEmpty() || forgiven.contains(kind) || ids.containsKey(Ids.key(noted.value()))) {
            return;
        }
        String hint = Suggestion.of(noted.value(), ids.values()).map(near -> "did you mean “" + near + "”?")
                .orElse(switch (kind) {
                    case "lot" -> "add needles/" + noted.value() + ".md, or name a lot that is there";
                    case "dye" -> "add dyes/" + noted.value() + ".md, or name one that is there";
                    case "vessel" -> "add it to vessels.yaml, or name one that is there";
                    case "method" -> "add methods/" + noted.value() + ".md, or name one that is there";
                    default -> "an entry's id is its day and its name, as in 2026-05-09-brick-half";
                });
        findings.error(noted.place(), "“" + noted.written() + "” names no " + kind + " of this notebook; " + hint);
    }

    /** Checks a method's references. */
    void check(Method method) {
        check("method", method.follows());
        check(method.needles());
        check(method.recipe());
    }

    /** Checks what a recipe refers to, but for the entry whose bath it reuses. */
    void check(Recipe recipe) {
        check("vessel", recipe.bath().vessel());
        checkParts(recipe.bath().dye());
        checkParts(recipe.bath().assistants());
        recipe.presoak().ifPresent(presoak -> checkParts(presoak.with()));
        recipe.before().forEach(treatment -> checkParts(treatment.with()));
        recipe.after().forEach(treatment -> checkParts(treatment.with()));
        checkParts(recipe.finish());
    }

    /** Checks the lot of some needles. */
    void check(Needles needles) {
        check("lot", needles.lot());
    }

    private void checkParts(List<Part> parts) {
        parts.forEach(part -> check("dye", part.is()));
    }

    /** Checks that a lot's condition is one of the plan's or the maker's own. */
    void checkCondition(NeedleLot lot, Cover cover) {
        if (forgiven.contains("condition")) {
            return;
        }
        Conditions conditions = Conditions.of(cover);
        List<String> ids = conditions.all().stream().map(Conditions.Condition::id).toList();
        lot.condition().filter(noted -> conditions.find(noted.value()).isEmpty()).ifPresent(noted -> findings.error(
                noted.place(), "“" + noted.written() + "” is no condition; " + Suggestion.of(noted.value(),
                        ids).map(near -> "did you mean “" + near + "”? Your").orElse("the conditions are "
                        + String.join(", ", ids) + "; your")
                        + " own are declared under “conditions:” in notebook.yaml"));
    }
}
