package fascicle.notebook.text;

/** How far two words lie apart: optimal string alignment, after Damerau (1964) and Levenshtein (1966). */
public final class EditDistance {

    private EditDistance() {}

    /**
     * How many letters must be added, taken out, changed or swapped with their neighbour.
     *
     * @param one a word
     * @param other another
     * @return the number of changes
     */
    public static int between(String one, String other) {
        int[][] changes = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                changes[i][j] = i == 0 || j == 0 ? i + j : least(changes, one, other, i, j);
            }
        }
        return changes[one.length()][other.length()];
    }

    private static int least(int[][] changes, String one, String other, int i, int j) {
        int changed = changes[i - 1][j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        int least = Math.min(Math.min(changes[i - 1][j], changes[i][j - 1]) + 1, changed);
        boolean swapped = i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2)
                && one.charAt(i - 2) == other.charAt(j - 1);
        return swapped ? Math.min(least, changes[i - 2][j - 2] + 1) : least;
    }
}
