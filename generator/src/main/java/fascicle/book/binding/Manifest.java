package fascicle.book.binding;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collections;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;
import org.jspecify.annotations.Nullable;

/**
 * The list of the files Fascicle made in a book's folder, kept there as {@value #NAME}: its form, the
 * edition, then one line a file, sorted, with the file's CRC32C, its size in bytes and its address.
 *
 * <pre>
 * fascicle manifest, form 1
 * edition studio
 * 8a9136aa 5120 entries/2026-05-09-brick.html
 * </pre>
 *
 * <p>A folder being filled holds the first two lines only: they mark it as ours from its first moment.
 *
 * @param edition the edition the book is for
 * @param sheets each file's size and checksum by its address
 */
record Manifest(String edition, SortedMap<String, Sheet> sheets) {
  static final String NAME = "fascicle.manifest";
  private static final int FORM = 1;
  private static final String TITLE = "fascicle manifest, form ";
  private static final Pattern FIRST = Pattern.compile(TITLE + "([0-9]+)");
  private static final Pattern SECOND = Pattern.compile("edition ([^\\s\\p{Cntrl}][^\\p{Cntrl}]*)");
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{8}) ([0-9]{1,18}) ([^\\p{Cntrl}]+)");

  /** One file's size in bytes and its CRC32C. */
  record Sheet(long size, int checksum) {
    static Sheet of(byte[] content) {
      CRC32C sum = new CRC32C();
      sum.update(content);
      return new Sheet(content.length, (int) sum.getValue());
    }

    String line(String address) {
      return HexFormat.of().toHexDigits(checksum) + " " + size + " " + address + "\n";
    }
  }

  Manifest {
    if (!SECOND.matcher("edition " + edition).matches()) {
      throw new IllegalArgumentException("not an edition: \"" + edition + "\"");
    }
    sheets = Collections.unmodifiableSortedMap(new TreeMap<>(sheets));
  }

  /** The first lines, which mark a folder as ours before anything else stands in it. */
  static String head(String edition) {
    return TITLE + FORM + "\nedition " + edition + "\n";
  }

  /** The whole text: the same book gives the same bytes. */
  String text() {
    StringBuilder text = new StringBuilder(head(edition));
    sheets.forEach((address, sheet) -> text.append(sheet.line(address)));
    return text.toString();
  }

  /**
   * Puts the manifest in a folder and waits until the disk has it: with the manifest safe, the next run
   * can mend any page a power cut lost, so no other file needs waiting for.
   */
  void write(Path folder) throws IOException {
    try (FileChannel file =
        FileChannel.open(folder.resolve(NAME), StandardOpenOption.WRITE, StandardOpenOption.CREATE)) {
      // Over the same first lines, never truncated: the mark holds if the run dies here.
      ByteBuffer bytes = ByteBuffer.wrap(text().getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        file.write(bytes);
      }
      file.force(true);
    }
  }

  /** The manifest's text as it stands in a folder, or null where there is none. */
  static @Nullable String readText(Path folder) throws TargetRefused, IOException {
    Path file = folder.resolve(NAME);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return null;
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw unreadable(folder, "is not a plain file");
    }
    try {
      return Files.readString(file);
    } catch (CharacterCodingException e) {
      throw unreadable(folder, "is not text");
    }
  }

  /**
   * Reads a manifest.
   *
   * @param folder where it stands, for the refusal's sentence
   * @throws TargetRefused if any of it is not as Fascicle writes it, or a newer Fascicle wrote it
   */
  static Manifest parse(String text, Path folder) throws TargetRefused {
    String[] lines = text.split("\r?\n", -1);
    Matcher first = FIRST.matcher(lines[0]);
    if (!first.matches()) {
      throw unreadable(folder, "does not begin as one");
    }
    BigInteger form = new BigInteger(first.group(1));
    if (form.compareTo(BigInteger.valueOf(FORM)) > 0) {
      throw new TargetRefused(
          folder + " holds a book of a newer Fascicle (its manifest has form " + form
              + ", this program knows " + FORM + "); use the newer program or choose an empty or new folder.");
    }
    Matcher second = SECOND.matcher(lines.length > 1 ? lines[1] : "");
    if (form.signum() == 0 || !second.matches() || !lines[lines.length - 1].isEmpty()) {
      throw unreadable(folder, "has a broken beginning or end");
    }
    SortedMap<String, Sheet> sheets = new TreeMap<>();
    for (int i = 2; i < lines.length - 1; i++) {
      Matcher line = LINE.matcher(lines[i]);
      if (!line.matches()) {
        throw unreadable(folder, "has a broken line " + (i + 1));
      }
      String address = line.group(3);
      if (!sheets.isEmpty() && sheets.lastKey().compareTo(address) >= 0) {
        throw unreadable(folder, "is out of order on line " + (i + 1));
      }
      try {
        Address.check(address);
      } catch (IllegalArgumentException e) {
        throw unreadable(folder, "has an address that Fascicle does not write, on line " + (i + 1));
      }
      sheets.put(
          address,
          new Sheet(Long.parseLong(line.group(2)), Integer.parseUnsignedInt(line.group(1), 16)));
    }
    return new Manifest(second.group(1), sheets);
  }

  /** Whether a folder is one we began: empty, or marked by the first words of a manifest. */
  static boolean marks(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Folders.isEmpty(folder);
    }
    try (var in = Files.newInputStream(file)) {
      // A run that died between making the file and writing it leaves it short.
      String start = new String(in.readNBytes(TITLE.length()), StandardCharsets.ISO_8859_1);
      return TITLE.startsWith(start);
    }
  }

  private static TargetRefused unreadable(Path folder, String why) {
    return new TargetRefused(
        "the manifest " + folder.resolve(NAME) + " " + why
            + ", so Fascicle cannot tell its own files from others; choose an empty or new folder.");
  }
}
