package startwater.content;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
final class Near {
    private static final int LONGEST = 60;

    private Near() {}

    /** The closest of the known words, if one is close enough to be what was meant. */
    static Optional<String> to(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream()
                .filter(candidate -> distance(word, candidate) <= allowed(candidate))
                .min(Comparator.comparingInt((String candidate) -> distance(word, candidate))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static int allowed(String word) {
        return Math.max(1, Math.min(4, word.length() / 3));
    }

    /** Insertions, deletions, replacements and swaps of neighbours that lead from one to the other, case aside. */
    static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(int[][] d, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
