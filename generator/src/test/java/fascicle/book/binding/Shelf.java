package fascicle.book.binding;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A folder to try things in, with a notebook and a place for a book. */
record Shelf(Path folder) {
  static final Map<String, String> FIRST =
      Map.of(
          "index.html", "first",
          "entries/brick.html", "brick, 45 g",
          "entries/ochre.html", "ochre",
          "methods/simmer.html", "simmer");
  static final Map<String, String> SECOND =
      Map.of(
          "index.html", "second",
          "entries/brick.html", "brick, 45 g",
          "entries/rust.html", "rust");

  static Shelf in(Path folder) throws IOException {
    Shelf shelf = new Shelf(folder.toRealPath());
    write(shelf.notebook().resolve("notebook.yaml"), "form: 1\n");
    return shelf;
  }

  Path notebook() {
    return folder.resolve("notebook");
  }

  Path book() {
    return folder.resolve("book");
  }

  Place place() {
    return new Place(book());
  }

  Binding open() throws IOException, TargetRefused {
    return Binding.open(book(), notebook(), "studio");
  }

  Bound publish(Map<String, String> pages) throws IOException, TargetRefused {
    return publish(pages, book());
  }

  Bound publish(Map<String, String> pages, Path target) throws IOException, TargetRefused {
    try (Binding binding = Binding.open(target, notebook(), "studio")) {
      for (Map.Entry<String, String> page : pages.entrySet()) {
        binding.put(page.getKey(), page.getValue().getBytes(StandardCharsets.UTF_8));
      }
      return binding.finish();
    }
  }

  /** The sentence with which a target is refused. */
  String refusal(Path target) {
    return assertThrows(TargetRefused.class, () -> Binding.open(target, notebook(), "studio").close())
        .getMessage();
  }

  /** The pages of a book, without its manifest. */
  static Map<String, String> pages(Path book) throws IOException {
    Map<String, String> pages = tree(book);
    pages.remove(Manifest.NAME);
    pages.values().removeIf(""::equals);
    return pages;
  }

  /** Everything below a folder: files with their text, folders with none. */
  static Map<String, String> tree(Path folder) throws IOException {
    Map<String, String> tree = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : (Iterable<Path>) paths.filter(p -> !p.equals(folder))::iterator) {
        boolean file = Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
        tree.put(Address.of(path, folder), file ? Files.readString(path) : "");
      }
    }
    return tree;
  }

  /** The names that stand on the shelf. */
  List<String> names() throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  static Path write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }
}
