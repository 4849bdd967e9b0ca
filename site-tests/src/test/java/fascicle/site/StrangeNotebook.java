package fascicle.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Notebooks of which no one would think who only thinks of the demo. */
enum StrangeNotebook {

    /** Titles of three hundred letters, in one word and in many; a long table, a long text. */
    SWOLLEN {
        @Override
        void fill(Leaves files) {
            files.entry("2024-05-01", "one-word", "w".repeat(300), "\"tag-" + "9".repeat(60) + "\"", "");
            files.entry("2024-05-02", "many-words", "brick on pine ".repeat(22), "2", "");
            files.entry("2024-05-03", "table", "A table of two hundred rows", "3", "| a | b | c | d | e | f | g | h |\n"
                    + "|---|---|---|---|---|---|---|---|\n"
                    + IntStream.range(0, 200).mapToObj(row -> "| " + row + " | a longer cell | 1 | 2 | 3 | 4 | 5 | 6 |\n")
                            .collect(Collectors.joining()));
            files.entry("2024-05-04", "long", "A hundred kilobytes", "4",
                    "The needles lay in the pot.\n\n".repeat(3500) + "x".repeat(2000) + "\n\n    " + "y".repeat(400) + "\n");
            files.put("methods/" + "m".repeat(60) + ".md", "---\ntitle: " + "method".repeat(50) + "\n---\n");
        }
    },

    /** Words from right to left, combined signs, faces. */
    OTHER_SCRIPTS {
        @Override
        void fill(Leaves files) {
            files.entry("2024-05-01", "שלום", "צביעת מחטי אורן בכורכום", "א1", "# כותרת\n\nמחטים ירוקות, 45 g, pH 4.\n\n- אחד\n- שתיים");
            files.entry("2024-05-02", "ابر", "إبر الصنوبر (brick) 45 g", "٤٢", "نص عربي، then English, ثم عربي.");
            files.entry("2024-05-03", "faces", "\uD83D\uDC69\uD83C\uDFFD\u200D\uD83D\uDD2C \uD83E\uDDFA \uD83C\uDF32", "\uD83C\uDF32", "\uD83D\uDE00\uD83D\uDE00");
            files.entry("2024-05-04", "overridden", "'abc \u202Egnp.exe\u202C \u2067def'", "5", "a \u202Eb\u202C c Z\u0351\u036B\u0343algo");
            files.entry("2024-05-05", "chinese", "松针染色：砖红", "六", "松针");
        }
    },

    /** Names that differ only in case, in accents, or in how an accent is written. */
    NEARLY_THE_SAME {
        @Override
        void fill(Leaves files) {
            files.entry("2024-05-01", "brique", "Brique", "a1", "");
            files.entry("2024-05-01", "briqué", "BRIQUÉ", "b1", "");
            files.entry("2024-05-01", "brique-2", "Brique\u0301", "á1", "");
            files.put("dyes/garance.md", "---\ntitle: Garance\nkind: dye\n---\n");
            files.put("dyes/garancé.md", "---\ntitle: garance\nkind: dye\n---\n");
            files.put("needles/Lot-É.md", "---\ntitle: LOT\n---\n");
        }
    },

    /** Scripts, drawings and templates where a name should stand, and in the words. */
    HOSTILE {
        @Override
        void fill(Leaves files) {
            files.put("notebook.yaml", "form: 1\ntitle: '</title></script><script>document.title=\"owned\"</script>${7*7}'\n"
                    + "maker: '<#if true><svg onload=alert(1)>'\nconditions: {odd: '</script><img src=x onerror=alert(1)>'}\n");
            files.put("dyes/dye.md", "---\ntitle: '</script><script>document.title=\"owned\"</script>'\nkind: dye\n---\n"
                    + "<#list 1..9 as x>${x}</#list>\n");
            files.entry("2024-05-01", "script", "'</script><script>document.title=\"owned\"</script>'",
                    "'</script><svg onload=alert(1)>'", BODY);
            files.entry("2024-05-02", "template", "'${\"x\"?api} <#if x> <#-- ${.now} [=1] #{1}'", "'${7*7}'", BODY);
            files.entry("2024-05-03", "drawing", "'<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>'",
                    "'\"></svg>'", BODY);
            files.entry("2024-05-04", "data", "'\\u003c/script>\\x3cscript>alert(1)<!--<script>'", "'\\\"`'", "<!-- <script> -->\n");
        }
    },

    /** One entry, and of that little. */
    ONE_ENTRY {
        @Override
        void fill(Leaves files) {
            files.clear();
            files.put("notebook.yaml", "form: 1\n");
            files.put("days/2024-05-01/pot.md", "---\nshare: open\n---\n");
        }
    },

    /** No entry at all. */
    NO_ENTRY {
        @Override
        void fill(Leaves files) {
            files.clear();
            files.put("notebook.yaml", "form: 1\ntitle: Empty\n");
        }
    },

    /** Pots of which nobody kept a colour. */
    NO_COLOUR {
        @Override
        void fill(Leaves files) {
            files.put("needles/lot.md", "---\ntitle: Lot\ncondition: fallen\nshare: open\n---\n");
            for (int pot = 1; pot <= 5; pot++) {
                files.put("days/2024-05-0" + pot + "/pot.md", "---\nshare: open\nneedles: {lot: lot}\n---\nNo colour.\n");
            }
        }
    },

    /** All of it in one year, on one day, from one pot's recipe. */
    ONE_YEAR {
        @Override
        void fill(Leaves files) {
            for (int pot = 1; pot <= 9; pot++) {
                files.entry("2024-05-01", "pot-" + pot, "Pot " + pot, String.valueOf(pot), "");
            }
        }
    };

    /** Stands in what the maker keeps private, and nowhere else. */
    static final String PRIVATE = "heronwhisper";

    private static final String BODY =
            """
            ### A heading that skips levels
            # and one that does not

            <script>document.title = 'owned'</script> <img src=x onerror="document.title='owned'">
            [one](javascript:document.title='owned') [two](../../../outside.md) [three](/etc/passwd) [four](../../../../etc/passwd)
            [five](file:///etc/passwd) [six](data:text/html,<script>alert(1)</script>) ${7*7} <#if x> <#stop>

            <svg><script>document.title='owned'</script></svg><style>body{display:none}</style><iframe src="javascript:alert(1)">
            </iframe>

            <b>bold <p>in <h1>a</h1> <ul>words<li>item<dd>term</b></ul>
            <table><caption>c<tr><td>1<td>2<tr><td>3<tr></table><dl><dd>late<dt>early</dl><h6></h6><th>cell</th><li>loose

            <blockquote><b>one<ul><p>two</ul></b><h2><ul><li>three</ul></h2><a href="https://example.org/"><p>four</p></a>
            <table></table><dl></dl><ol start="-3"><div>five</div></ol><pre><p>six</p></pre><q><hr></q></blockquote>
            """;

    /** Puts the notebook's own files beside those that all of them have. */
    abstract void fill(Leaves files);

    /** Writes the notebook into a folder of its own below one. */
    Path write(Path below) {
        Leaves files = new Leaves();
        files.put("notebook.yaml", "form: 1\ntitle: A strange notebook\nmaker: Larchwater workshop\n");
        files.put("vessels.yaml", "pot: {title: Pot, shape: round, diameter: 20 cm, height: 20 cm, made-of: enamel}\n");
        files.put("dyes/dye.md", "---\ntitle: Dye\nkind: dye\nform: powder\n---\n");
        files.put("needles/lot.md", "---\ntitle: Lot\ncondition: fallen\ncolour: [{lab: [60, 5, 25]}]\nshare: open\n---\nFallen.\n");
        files.put("days/2024-06-01/private.md", "---\ntitle: Private " + PRIVATE + "\ntag: " + PRIVATE + "\n---\n" + PRIVATE + "\n");
        fill(files);
        return files.write(below.resolve(name()));
    }

    /** The files of a notebook, before they are written. */
    static final class Leaves {

        private final Map<String, String> texts = new TreeMap<>();

        void put(String path, String text) {
            texts.put(path, text);
        }

        void clear() {
            texts.clear();
        }

        /** An entry that everyone may read, with a recipe, a colour and a verdict. */
        void entry(String day, String name, String title, String tag, String body) {
            put("days/" + day + "/" + name + ".md", "---\ntitle: " + title + "\ntag: " + tag + "\nshare: open\n"
                    + "needles: {lot: lot, weight: 30 g}\nbath: {vessel: pot, water: 2 L, dye: [{is: dye, amount: 1 g}]}\n"
                    + "colour: [{lab: [40, 20, 20]}, {lab: [42, 21, 19]}, {lab: [38, 22, 21]}]\n"
                    + "outcome: {verdict: worked, evenness: 4}\n---\n" + body);
        }

        private Path write(Path folder) {
            try {
                for (Map.Entry<String, String> file : texts.entrySet()) {
                    Path path = folder.resolve(file.getKey());
                    Files.createDirectories(path.getParent());
                    Files.writeString(path, file.getValue());
                }
                return folder;
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        }
    }
}
