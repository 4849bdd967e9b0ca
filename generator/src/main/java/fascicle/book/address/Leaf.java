package fascicle.book.address;

/**
 * A page of the book: where it is and what it is called.
 *
 * @param id what its thing is looked up by
 * @param address from the book's top, as a file name
 * @param title what its thing is called
 */
public record Leaf(String id, String address, String title) {

    /**
     * The way to the page from the book's top.
     *
     * @return the address as a link spells it
     */
    public String link() {
        return FileNames.link(address);
    }

    /**
     * Any text as a link spells it: UTF-8, percent-encoded but for unreserved characters (RFC 3986).
     *
     * @param text such as an id
     * @return the text in a link
     */
    public static String asLink(String text) {
        return FileNames.link(text);
    }
}
