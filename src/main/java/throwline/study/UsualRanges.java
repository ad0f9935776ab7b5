package throwline.study;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Usual ranges for models of this size, from a resource file that names its sources. */
final class UsualRanges {

    private static final String RESOURCE = "/throwline/usual.csv";

    private final Map<String, List<Range>> ranges;

    private UsualRanges(Map<String, List<Range>> ranges) {
        this.ranges = ranges;
    }

    /**
     * Usual limits.
     *
     * @param least in SI units; angles in degrees
     * @param most in SI units; angles in degrees
     */
    record Range(double least, double most) {
        boolean holds(double value) {
            return value >= least && value <= most;
        }
    }

    static UsualRanges load() {
        try (InputStream in = UsualRanges.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the file of usual ranges is missing from the jar");
            }
            return new UsualRanges(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .collect(Collectors.toMap(cells -> cells[0], cells -> List.of(range(cells, 1), range(cells, 3)))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Range range(String[] cells, int first) {
        return new Range(Double.parseDouble(cells[first]), Double.parseDouble(cells[first + 1]));
    }

    /** The limits of a code, for a glider or for a powered model. */
    Range of(String code, boolean glider) {
        List<Range> both = ranges.get(code);
        if (both == null) {
            throw new IllegalArgumentException("no usual range for " + code);
        }
        return both.get(glider ? 1 : 0);
    }
}
