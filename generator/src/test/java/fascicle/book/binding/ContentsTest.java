package fascicle.book.binding;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An address is a plain relative path, and no file system may take two of them for one. */
class ContentsTest {
  private final Contents contents = new Contents();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "/", "/index.html", "entries/", "entries//brick.html", ".", "..", "../index.html",
        "entries/../../index.html", "./index.html", "entries\\brick.html", "C:/index.html", "c:index.html",
        "index\n.html", "index\u0000.html", "fascicle.manifest", "Fascicle.MANIFEST", "fascicle.manifest/a.html"
      })
  void whatIsNoRelativePathIsRefused(String address) {
    assertThrows(IllegalArgumentException.class, () -> contents.claim(address));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "index.html", "entries/2026-05-09-brick.html", "a/b/c/d.svg", "days/Föhre 1 – 20 g.jpg", ".hidden",
        "...", "a..b", "entries/fascicle.manifest", "10:30.jpg"
      })
  void anOrdinaryPathIsTaken(String address) {
    assertDoesNotThrow(() -> contents.claim(address));
  }

  @ParameterizedTest
  @CsvSource({
    "index.html, index.html",
    "index.html, INDEX.html",
    "title.html, TITLE.html", // also under a Turkish locale
    "f\u00f6hre.jpg, fo\u0308hre.jpg", // composed and decomposed
    "F\u00d6HRE.jpg, fo\u0308hre.jpg",
    "entries/a.html, Entries/b.html", // one folder in two spellings
    "entries, entries/a.html", // a page where a folder must be
    "entries/a.html, ENTRIES",
  })
  void twoAddressesThatMeetAreRefusedByName(String one, String other) {
    contents.claim(one);
    String message =
        assertThrows(IllegalArgumentException.class, () -> contents.claim(other)).getMessage();
    assertTrue(message.contains("\"" + other + "\""), message);
  }

  @Test
  void addressesThatOnlyLookAlikeAreTaken() {
    contents.claim("strasse.html");
    assertDoesNotThrow(() -> contents.claim("straße.html"));
    assertDoesNotThrow(() -> contents.claim("entries/strasse.html"));
    assertDoesNotThrow(() -> contents.claim("entries/index.html"));
  }
}
