package fascicle.workings.care;

import fascicle.notebook.Dye;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Missing;
import fascicle.notebook.Notebook;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.edition.EditionCut;
import java.nio.file.Path;
import java.util.List;

/**
 * A written notebook with one of each thing that care depends on, for recipes of an entry each. The packs of those that
 * are not bare were looked at.
 */
public final class DyeRoom {

    private final WrittenNotebook notebook;

    private DyeRoom(WrittenNotebook notebook) {
        this.notebook = notebook;
    }

    /** The room, in an empty folder. */
    public static DyeRoom in(Path folder) {
        return new DyeRoom(WrittenNotebook.small(folder))
                .thing("brick", "title: Brick", "kind: dye", "form: powder")
                .thing("rain-blue", "kind: dye", "form: liquid")
                .thing("smoke", "kind: dye", "form: powder", "label: {signal: danger, says: [H317, H999]}",
                        "cautions: [dust, stains]")
                .thing("soda", "kind: alkali", "form: crystals", "label: {signal: warning, says: [H319]}")
                .thing("sour-crystals", "kind: acid", "form: crystals")
                .thing("alum", "kind: mordant", "form: crystals")
                .thing("rusty-jar", "kind: mordant", "form: liquid", "metal: iron")
                .thing("copperas", "kind: mordant", "form: crystals")
                .thing("blue-stone", "kind: mordant", "form: crystals", "metal: copper")
                .thing("potassium-dichromate", "kind: mordant", "form: crystals")
                .thing("stannous-chloride", "kind: mordant", "form: crystals")
                .thing("old-jar", "kind: mordant", "form: crystals")
                .thing("copper-red", "kind: dye", "form: liquid")
                .thing("shellac-flakes", "kind: other", "form: crystals")
                .thing("bare-dye", "kind: dye")
                .thing("bare-acid", "kind: acid", "acidity: 5 %")
                .thing("bare-vinegar", "kind: acid", "acidity: 9.9 %")
                .thing("bare-strong-vinegar", "kind: acid", "acid: acetic", "acidity: 10 %")
                .thing("bare-wetting", "kind: wetting")
                .thing("bare-salt", "kind: salt")
                .thing("bare-tin-salt", "kind: salt", "metal: tin")
                .thing("bare-roots", "kind: dye", "form: plant")
                .thing("fibre-red", "kind: dye", "form: liquid", "label: {signal: danger, says: [H317, H334]}")
                .thing("sandarac", "title: Sandarac", "form: crystals")
                .thing("unmarked-alum", "form: crystals")
                .thing("copper-sulphate", "kind: other", "form: crystals")
                .thing("mistyped", "kind: mordnt", "form: powder", "metal: copper")
                .thing("linseed-oil", "kind: other", "form: liquid")
                .thing("sealer", "title: Walnut oil", "kind: other", "form: liquid")
                .thing("walnut-stain", "kind: other", "form: liquid")
                .thing("thinner", "kind: other", "form: liquid", "label: {signal: danger, says: [H225]}")
                .thing("glycerin", "kind: other", "form: liquid")
                .with("vessels.yaml", """
                        wide-pan: {title: Wide pan, made-of: enamel}
                        iron-pan: {title: Iron pan, made-of: iron}
                        old-kettle: {title: Old kettle, made-of: copper}
                        jar: {title: Three-litre jar, made-of: glass}
                        light-pot: {title: Light pot, made-of: aluminium}
                        bin: {title: Presoak bin, made-of: plastic}
                        crock: {title: Crock}
                        """);
    }

    private DyeRoom thing(String id, String... facts) {
        boolean labelled = id.startsWith("bare-") || String.join("\n", facts).contains("label: ");
        return with("dyes/" + id + ".md", "---\n" + String.join("\n", facts)
                + (labelled ? "" : "\nlabel: {says: []}") + "\n---\n");
    }

    DyeRoom with(String file, String text) {
        notebook.with(file, text);
        return this;
    }

    /** The same with an entry of this recipe, shared with anyone. */
    public DyeRoom entry(String name, String recipe) {
        return with("days/2026-05-09/" + name + ".md",
                "---\nneedles: {lot: scalded-2025, weight: 45 g}\nshare: open\n" + recipe + "\n---\n");
    }

    /** All of it; one thing's file has an error, and so only its id is left. */
    public Notebook read() {
        Notebook read = notebook.read().notebook();
        if (!read.missing().stream().map(Missing::what).toList().equals(List.of("mistyped"))) {
            throw new IllegalStateException(read.missing().toString());
        }
        return read;
    }

    /** What an entry of this recipe uses. */
    public Uses uses(String recipe) {
        return uses(recipe, Edition.STUDIO);
    }

    /** What an entry of this recipe uses, as an edition's book knows it. */
    Uses uses(String recipe, Edition edition) {
        Notebook cut = EditionCut.of(entry("pot", recipe).read(), edition);
        Entry entry = cut.entry("2026-05-09-pot").orElseThrow();
        return Care.of(cut).uses(entry.recipe());
    }

    /** What an entry of this recipe uses where the file of one thing is not there. */
    Uses usesWithout(String id, String recipe) {
        Notebook read = entry("pot", recipe).read();
        Notebook without = new Notebook(read.cover(), read.lots(),
                read.dyes().stream().filter(dye -> !dye.id().equals(id)).toList(), read.vessels(), read.methods(),
                read.days(), read.entries(), read.missing());
        return Care.of(without).uses(without.entry("2026-05-09-pot").orElseThrow().recipe());
    }

    Dye thing(String id) {
        return read().dyes().stream().filter(dye -> dye.id().equals(id)).findFirst().orElseThrow();
    }
}
