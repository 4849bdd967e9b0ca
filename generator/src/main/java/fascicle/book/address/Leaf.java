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
     * A word as the part of a link after its {@code #} spells it.
     *
     * @param word any text
     * @return percent-encoded
     */
    public static String spelt(String word) {
        return FileNames.link(word);
    }
}
