package fascicle.book.binding;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/** The addresses a new book has taken so far; safe to use from several threads. */
final class Contents {
  private final ConcurrentMap<String, String> taken = new ConcurrentHashMap<>();

  /**
   * Takes an address for one page.
   *
   * @throws IllegalArgumentException if the address is not one, or if some file system would take it, or
   *     a folder on its way, for another of this book
   */
  void claim(String address) {
    Address.check(address);
    // Folders end in "/", so that a page can never be told from a folder of the same name by luck.
    for (int slash = address.indexOf('/'); slash >= 0; slash = address.indexOf('/', slash + 1)) {
      claim(address.substring(0, slash), "/", address);
    }
    claim(address, "", address);
  }

  private void claim(String path, String ending, String address) {
    String spelled = path + ending;
    String before = taken.putIfAbsent(Address.key(path), spelled);
    if (before != null && (ending.isEmpty() || !before.equals(spelled))) {
      throw new IllegalArgumentException(
          "the address \"" + address + "\" meets \"" + before + "\", which the book already holds");
    }
  }
}
