package fascicle.notebook;

import java.util.Optional;

/**
 * Rub fastness as the maker graded it, in grades of the grey scale ({@code 1} to {@code 5}, halves as {@code 4-5}).
 *
 * @param rubDry with a dry cloth
 * @param rubWet with a wet cloth
 */
public record Fastness(Optional<Noted<String>> rubDry, Optional<Noted<String>> rubWet) {}
