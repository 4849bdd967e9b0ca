package fascicle.book.binding;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a folder holds, told apart by its manifest.
 *
 * @param manifest the list of our files, or null where there is none
 * @param manifestText the manifest as it stands on the disk, empty where there is none
 * @param sizes the sizes in bytes of the listed files that are there
 * @param foreign what neither we nor the operating system made, sorted; folders end in {@code /}
 */
record Holding(
    @Nullable Manifest manifest, String manifestText, Map<String, Long> sizes, List<String> foreign) {
  private static final Set<String> LITTER =
      Set.of(Address.key(".DS_Store"), Address.key("Thumbs.db"), Address.key("desktop.ini"));
  private static final int NAMED = 3;

  /** What a folder holds; nothing where there is no folder. */
  static Holding of(Path folder) throws TargetRefused, IOException {
    if (!Folders.exists(folder)) {
      return new Holding(null, "", Map.of(), List.of());
    }
    String text = Manifest.readText(folder);
    if (text == null) {
      return new Holding(null, "", Map.of(), strangers(folder));
    }
    Manifest manifest = Manifest.parse(text, folder);
    Map<String, Long> sizes = new HashMap<>();
    List<String> foreign = new ArrayList<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            String address = Address.of(file, folder);
            if (attributes.isRegularFile() && manifest.sheets().containsKey(address)) {
              sizes.put(address, attributes.size());
            } else if (!address.equals(Manifest.NAME) && !isLitter(file, attributes)) {
              foreign.add(address);
            }
            return FileVisitResult.CONTINUE;
          }
        });
    Collections.sort(foreign);
    return new Holding(manifest, text, sizes, foreign);
  }

  /** Whether the folder holds nothing but what we and the operating system made. */
  boolean ours() {
    return foreign.isEmpty();
  }

  /** The first strangers by name, for a sentence. */
  String firstForeign() {
    String named = String.join(", ", foreign.subList(0, Math.min(NAMED, foreign.size())));
    String more = foreign.size() > NAMED ? " and " + (foreign.size() - NAMED) + " more" : "";
    return named.replaceAll("\\p{Cntrl}", "?") + more;
  }

  /** Whether the folder holds exactly this content at this address, by reading the file. */
  boolean has(Path folder, String address, byte[] content) {
    Long size = sizes.get(address);
    if (size == null || size != content.length) {
      return false;
    }
    try {
      return Arrays.equals(content, Files.readAllBytes(Address.in(folder, address)));
    } catch (IOException unreadable) {
      return false; // so it is written anew, which mends it
    }
  }

  static boolean isLitter(Path file, BasicFileAttributes attributes) {
    Path name = file.getFileName();
    return attributes.isRegularFile() && name != null && LITTER.contains(Address.key(name.toString()));
  }

  /** Without a manifest nothing is ours, so the first level says enough. */
  private static List<String> strangers(Path folder) throws IOException {
    List<String> strangers = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        BasicFileAttributes attributes =
            Files.readAttributes(entry, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (!isLitter(entry, attributes)) {
          strangers.add(Address.of(entry, folder) + (attributes.isDirectory() ? "/" : ""));
        }
      }
    }
    Collections.sort(strangers);
    return strangers;
  }
}
