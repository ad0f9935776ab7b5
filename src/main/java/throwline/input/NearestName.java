package throwline.input;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Compares names as people type them. */
final class NearestName {

    private static final int LONGEST = 60;

    private NearestName() {}

    /** A name without what does not count: case, blanks, hyphens, underscores. */
    static String key(String name) {
        StringBuilder key = new StringBuilder(name.length());
        String lower = name.toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if (!Character.isWhitespace(c) && c != '_' && c != '-') {
                key.append(c);
            }
        }
        return key.toString();
    }

    /** The known name that was probably meant; empty where none is near. */
    static Optional<String> of(String name, Collection<String> known) {
        String wanted = key(name);
        if (wanted.isEmpty() || wanted.length() > LONGEST) {
            return Optional.empty();
        }
        Optional<String> best = Optional.empty();
        int least = Math.max(1, wanted.length() / 3) + 1;
        for (String candidate : known) {
            String key = key(candidate);
            int distance =
                    key.startsWith(wanted) || (wanted.startsWith(key) && key.length() > 2) ? 1 : distance(wanted, key);
            if (distance < least) {
                least = distance;
                best = Optional.of(candidate);
            }
        }
        return best;
    }

    /** Letters to change, add, leave out or swap with their neighbour. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                d[i][j] = Math.min(change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
