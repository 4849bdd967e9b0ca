package fascicle.book.words;

import fascicle.notebook.Word;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;

/**
 * The book's own words, by key.
 *
 * <p>A message may hold {@code {0}}, {@code {1}}, … for what is given with it. Where the first thing given is the whole
 * number 1 and the key has a singular, spelt with {@code .one} at its end, the singular is said.
 */
public final class Words {

    private static final String FILE = "/fascicle/book/words.properties";
    private static final String SINGULAR = ".one";

    private final Map<String, String> messages;

    private Words(Map<String, String> messages) {
        this.messages = messages;
    }

    /**
     * The words that come with the program.
     *
     * @return the words of the message file
     */
    public static Words shipped() {
        Properties read = new Properties();
        try (InputStream file = Words.class.getResourceAsStream(FILE)) {
            if (file == null) {
                throw new IllegalStateException("the program came without its words: " + FILE);
            }
            read.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        } catch (IOException failed) {
            throw new UncheckedIOException("the book's words cannot be read: " + FILE, failed);
        }
        Map<String, String> messages = new TreeMap<>();
        read.forEach((key, message) -> messages.put((String) key, (String) message));
        return new Words(messages);
    }

    /**
     * The words behind a key.
     *
     * @param key the key
     * @param given what stands for {@code {0}}, {@code {1}}, …
     * @return the message, filled in
     * @throws IllegalArgumentException if there is no such key
     */
    public String say(String key, Object... given) {
        boolean single = given.length > 0 && given[0].equals(1) && messages.containsKey(key + SINGULAR);
        String message = messages.get(single ? key + SINGULAR : key);
        if (message == null) {
            throw new IllegalArgumentException("the book has no words for this key: " + key);
        }
        return given.length == 0 ? message : filled(message, given);
    }

    /**
     * The words for one of the few words of the notebook's form.
     *
     * @param kind what it is one of, such as {@code verdict}
     * @param word the word
     * @return the words of the key {@code kind.word}
     */
    public String name(String kind, Word word) {
        return say(kind + "." + word.word());
    }

    /**
     * All keys.
     *
     * @return in order
     */
    public Set<String> keys() {
        return messages.keySet();
    }

    private static String filled(String message, Object[] given) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (int open = message.indexOf('{'); open >= 0; open = message.indexOf('{', from)) {
            int close = message.indexOf('}', open);
            text.append(message, from, open).append(given[Integer.parseInt(message.substring(open + 1, close))]);
            from = close + 1;
        }
        return text.append(message.substring(from)).toString();
    }
}
