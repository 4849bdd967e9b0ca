package fascicle.notebook;

/**
 * A piece of a file's body: Markdown in the maker's words.
 *
 * @param markdown the text
 * @param place where it begins
 * @param share who may read it, before its own marked headings are obeyed
 */
public record Note(String markdown, Place place, Edition share) {

    /**
     * Whether there is anything to read.
     *
     * @return true where the text is blank
     */
    public boolean isBlank() {
        return markdown.isBlank();
    }
}
