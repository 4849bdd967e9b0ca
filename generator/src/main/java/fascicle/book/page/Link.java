package fascicle.book.page;

import java.util.Optional;

/**
 * Words that may lead somewhere.
 *
 * @param text the words
 * @param href where they lead, relative to the page; nothing for words alone
 */
public record Link(String text, Optional<String> href) {

    /**
     * Words alone.
     *
     * @param text the words
     * @return a link that leads nowhere
     */
    public static Link plain(String text) {
        return new Link(text, Optional.empty());
    }
}
