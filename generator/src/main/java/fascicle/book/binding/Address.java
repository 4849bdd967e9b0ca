package fascicle.book.binding;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;

/** The rules for a page's address, such as {@code entries/2026-05-09-brick.html}. */
final class Address {
  private Address() {}

  /**
   * Returns the address if it is a plain relative path with {@code /} between its names.
   *
   * @throws IllegalArgumentException if it could lead out of the book's folder or break the manifest's
   *     lines, or is the manifest's own
   */
  static String check(String address) {
    for (String name : address.split("/", -1)) {
      if (name.isEmpty() || name.equals(".") || name.equals("..")) {
        throw new IllegalArgumentException("not a relative address of a page: \"" + address + "\"");
      }
    }
    boolean drive = address.length() > 1 && address.charAt(1) == ':' && Character.isLetter(address.charAt(0));
    if (drive || address.indexOf('\\') >= 0 || hasControl(address)) {
      throw new IllegalArgumentException("a character that an address cannot hold: \"" + address + "\"");
    }
    int slash = address.indexOf('/');
    if ((slash < 0 ? address : address.substring(0, slash)).equalsIgnoreCase(Manifest.NAME)) {
      throw new IllegalArgumentException("the manifest's own address: \"" + address + "\"");
    }
    return address;
  }

  /** What two addresses share when some file system would take them for the same. */
  static String key(String address) {
    StringBuilder folded = new StringBuilder(address.length());
    Normalizer.normalize(address, Normalizer.Form.NFC)
        .codePoints()
        .forEach(c -> folded.appendCodePoint(Character.toLowerCase(Character.toUpperCase(c))));
    return Normalizer.normalize(folded, Normalizer.Form.NFC);
  }

  private static boolean hasControl(String address) {
    for (int i = 0; i < address.length(); i++) {
      if (Character.isISOControl(address.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  /** The file at a checked address in a folder. */
  static Path in(Path folder, String address) throws IOException {
    try {
      return folder.resolve(address);
    } catch (InvalidPathException e) {
      throw new IOException("this file system cannot hold a file named \"" + address + "\"", e);
    }
  }

  /** The address of a file that a walk of a folder found. */
  static String of(Path file, Path folder) {
    // A walk from the folder begins every path with it, so that nothing need be compared.
    String address = file.toString().substring(folder.toString().length() + 1);
    return address.replace(file.getFileSystem().getSeparator(), "/");
  }

  /** The folder part of an address, empty for a file at the top. */
  static String folder(String address) {
    return address.substring(0, Math.max(0, address.lastIndexOf('/')));
  }
}
