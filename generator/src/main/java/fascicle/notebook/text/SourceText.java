package fascicle.notebook.text;

import fascicle.notebook.Findings;
import fascicle.notebook.Place;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A file of the notebook, decoded.
 *
 * @param file path relative to the notebook, with {@code /}
 * @param text its characters, every line ended by a line feed alone
 */
public record SourceText(String file, String text) {

    /** The largest file that is read, in bytes: some hundred times a long entry. */
    public static final long MOST_BYTES = 2_000_000;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /**
     * Reads a file. What keeps it from being read becomes a finding.
     *
     * @param root the notebook's folder
     * @param file path relative to it, with {@code /}
     * @param findings where to say what is wrong
     * @return the text, or nothing
     */
    public static Optional<SourceText> read(Path root, String file, Findings findings) {
        Path path = root.resolve(file);
        try {
            // Folders were checked when they were listed, so that only the file itself can lead out.
            if (Files.isSymbolicLink(path) && !path.toRealPath().startsWith(root.toRealPath())) {
                findings.error(Place.of(file), "this file is a link that leaves the notebook, so it was not read; "
                        + "put the file itself here");
                return Optional.empty();
            }
            if (!Files.isRegularFile(path)) {
                findings.error(Place.of(file),
                        "this is no plain file, so it was not read; move it out of the notebook");
                return Optional.empty();
            }
            long size = Files.size(path);
            if (size > MOST_BYTES) {
                findings.error(Place.of(file), "this file holds " + size / 1_000_000 + " MB of text, more than the "
                        + MOST_BYTES / 1_000_000 + " MB that a file may hold; split it, or move what is no writing "
                        + "elsewhere");
                return Optional.empty();
            }
            return decode(file, Files.readAllBytes(path), findings);
        } catch (AccessDeniedException denied) {
            findings.error(Place.of(file), "this file may not be read; give yourself the right to read it");
        } catch (NoSuchFileException gone) {
            findings.error(Place.of(file), "this file is a link that leads to nothing; put the file itself here");
        } catch (FileSystemException failed) {
            findings.error(Place.of(file), "this file could not be read"
                    + (failed.getReason() == null ? "" : " (" + failed.getReason() + ")") + "; put it here anew");
        } catch (IOException failed) {
            findings.error(Place.of(file),
                    "this file could not be read (" + failed.getMessage() + "); put it here anew");
        }
        return Optional.empty();
    }

    /**
     * Decodes UTF-8, strictly.
     *
     * @param file path relative to the notebook
     * @param bytes the file's bytes
     * @param findings where to say what is wrong
     * @return the text, or nothing
     */
    static Optional<SourceText> decode(String file, byte[] bytes, Findings findings) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer decoded = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer encoded = ByteBuffer.wrap(bytes);
        CoderResult result = decoder.decode(encoded, decoded, true);
        String text = decoded.flip().toString();
        if (result.isError()) {
            Place place = placeAtEnd(file, withoutMark(lineFeeds(text)));
            String found = String.format(java.util.Locale.ROOT, "0x%02X", bytes[encoded.position()] & 0xFF);
            findings.error(place, "this file is not UTF-8 text: the byte " + found + " begins no character; "
                    + "save it again with the encoding UTF-8");
            return Optional.empty();
        }
        return Optional.of(new SourceText(file, withoutMark(lineFeeds(text))));
    }

    private static String lineFeeds(String text) {
        return text.indexOf('\r') < 0 ? text : text.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static String withoutMark(String text) {
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }

    private static Place placeAtEnd(String file, String text) {
        int lastLine = text.lastIndexOf('\n') + 1;
        int line = (int) text.chars().filter(character -> character == '\n').count() + 1;
        return new Place(file, line, text.codePointCount(lastLine, text.length()) + 1);
    }
}
