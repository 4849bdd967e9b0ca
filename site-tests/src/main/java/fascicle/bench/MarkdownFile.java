package fascicle.bench;

import java.util.List;

/** Front matter and a body put together as the notebook's files are. */
final class MarkdownFile {

    private MarkdownFile() {
    }

    /** The text of a file with those lines of front matter and that body. */
    static String of(List<String> frontMatter, String body) {
        return "---\n" + String.join("\n", frontMatter) + "\n---\n\n" + body.strip() + "\n";
    }
}
