package fascicle.site;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * The Nu checker: whether a page is HTML as the living standard has it. It runs in this process and fetches nothing;
 * style sheets are not looked at.
 */
final class Nu {

    /** Everything that HTML may hold today, drawings in it too: a schema in the checker's own jar. */
    private static final String SCHEMA = "http://s.validator.nu/html5-all.rnc";

    /** Where the page is said to stand, so that the checker can tell its own style from a stranger's; never asked for. */
    private static final String PLACE = "https://book.example/";

    /** Warnings that may stand, by a part of their words; the reason beside each. */
    private static final List<String> ALLOWED = List.of(
            // What was bought twice, or read twice, stands under its own word each time.
            "Duplicate “dt” name",
            // The maker's words stay as the maker's keyboard writes them.
            "is not in Unicode Normalization Form C");

    private final List<String> said = new ArrayList<>();
    private final SimpleDocumentValidator checker;

    Nu() {
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException found) {
                String words = String.valueOf(found.getMessage());
                if (ALLOWED.stream().noneMatch(words::contains)) {
                    said.add(found.getLineNumber() + ":" + found.getColumnNumber() + ": warning: " + words);
                }
            }

            @Override
            public void error(SAXParseException found) {
                said.add(found.getLineNumber() + ":" + found.getColumnNumber() + ": error: " + found.getMessage());
            }

            @Override
            public void fatalError(SAXParseException found) {
                error(found);
            }
        };
        try {
            checker = new SimpleDocumentValidator(true, false, false);
            checker.setUpMainSchema(SCHEMA, handler);
            checker.setUpValidatorAndParsers(handler, false, false);
        } catch (Exception unusable) {
            throw new IllegalStateException("The checker's own schema cannot be read", unusable);
        }
    }

    /** Every fault of a book's pages, as {@code address:line:column: error: …}. */
    List<String> faults(PublishedBook book) {
        return book.pages().stream()
                .flatMap(address -> faults(address, book.text(address)).stream().map(fault -> address + ":" + fault))
                .toList();
    }

    /** Every fault of a page, as {@code line:column: error: …}. */
    List<String> faults(String address, String html) {
        said.clear();
        try {
            InputSource page = new InputSource(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
            page.setEncoding("UTF-8");
            page.setSystemId(PLACE + address.replaceAll("[^a-z0-9./]", "-"));
            checker.checkHtmlInputSource(page);
        } catch (IOException | SAXException broken) {
            said.add("0:0: error: " + broken.getMessage());
        }
        return List.copyOf(said);
    }
}
