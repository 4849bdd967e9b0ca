package fascicle.book.binding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The manifest says which files are ours, and is trusted only if it is exactly as we write it. */
class ManifestTest {
  private static final Path FOLDER = Path.of("book");
  private static final String HEAD = "fascicle manifest, form 1\nedition studio\n";

  /** RFC 3720 (iSCSI), appendix B.4, the CRC examples; the RFC prints the bytes lowest first. */
  @Test
  void theChecksumIsTheOneOfTheInternetStandard() {
    byte[] ones = new byte[32];
    Arrays.fill(ones, (byte) 0xff);
    byte[] rising = new byte[32];
    byte[] falling = new byte[32];
    for (int i = 0; i < 32; i++) {
      rising[i] = (byte) i;
      falling[i] = (byte) (31 - i);
    }
    assertEquals(0x8a9136aa, Manifest.Sheet.of(new byte[32]).checksum());
    assertEquals(0x62a8ab43, Manifest.Sheet.of(ones).checksum());
    assertEquals(0x46dd794e, Manifest.Sheet.of(rising).checksum());
    assertEquals(0x113fdb5c, Manifest.Sheet.of(falling).checksum());
  }

  @Test
  void itsTextIsFormAndEditionAndThenSortedLines() {
    TreeMap<String, Manifest.Sheet> sheets = new TreeMap<>();
    sheets.put("index.html", new Manifest.Sheet(12, 0x0000beef));
    sheets.put("entries/brick.html", Manifest.Sheet.of(new byte[32]));
    assertEquals(
        HEAD + "8a9136aa 32 entries/brick.html\n0000beef 12 index.html\n",
        new Manifest("studio", sheets).text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void whatWasWrittenReadsBackEvenIfATransferTurnedTheLineEnds(String end) throws TargetRefused {
    TreeMap<String, Manifest.Sheet> sheets = new TreeMap<>();
    sheets.put("days/Föhre – 20 g.jpg", new Manifest.Sheet(5_000_000_000L, -1));
    sheets.put("a b\u2028c.html", new Manifest.Sheet(0, 0));
    Manifest manifest = new Manifest("students", sheets);
    assertEquals(manifest, Manifest.parse(manifest.text().replace("\n", end), FOLDER));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "some notes of mine\n",
        "fascicle manifest, form 0\nedition studio\n",
        "fascicle manifest, form 1\n",
        "fascicle manifest, form 1\nedition \n",
        HEAD + "8a9136aa 32 index.html",
        HEAD + "8a9136aa index.html\n",
        HEAD + "8A9136AA 32 index.html\n",
        HEAD + "8a9136aa -1 index.html\n",
        HEAD + "\n",
        HEAD + "8a9136aa 32 /etc/passwd\n",
        HEAD + "8a9136aa 32 C:/needles.txt\n",
        HEAD + "8a9136aa 32 ../notebook/notebook.yaml\n",
        HEAD + "8a9136aa 32 entries/../../notebook.yaml\n",
        HEAD + "8a9136aa 32 ..\\notebook.yaml\n",
        HEAD + "8a9136aa 32 index.html\n8a9136aa 32 index.html\n",
        HEAD + "8a9136aa 32 index.html\n8a9136aa 32 entries/brick.html\n",
        HEAD + "8a9136aa 32 fascicle.manifest\n",
      })
  void whatFascicleDoesNotWriteIsRefused(String text) {
    String sentence = assertThrows(TargetRefused.class, () -> Manifest.parse(text, FOLDER)).getMessage();
    assertTrue(sentence.contains("choose an empty or new folder"), sentence);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "99999999999999999999"})
  void aNewerFormIsRefusedByItsNumber(String form) {
    String text = "fascicle manifest, form " + form + "\nwhatever\n";
    String sentence = assertThrows(TargetRefused.class, () -> Manifest.parse(text, FOLDER)).getMessage();
    assertTrue(sentence.contains("newer") && sentence.contains(form), sentence);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "stu\ndio", "studio\r"})
  void anEditionIsOneLineOfWords(String edition) {
    assertThrows(IllegalArgumentException.class, () -> new Manifest(edition, new TreeMap<>()));
  }
}
