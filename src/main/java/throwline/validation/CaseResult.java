package throwline.validation;

import java.util.List;

/**
 * What came of one case.
 *
 * @param name file name without extension
 * @param title what it is, one line
 * @param source where the values come from
 * @param notes what was assumed, and what is known about failures
 * @param checks the values that must be met
 * @param pairs values for the statistics
 */
public record CaseResult(String name, String title, String source, String notes, List<Check> checks, List<Pair> pairs) {

    public CaseResult {
        checks = List.copyOf(checks);
        pairs = List.copyOf(pairs);
    }

    static CaseResult of(CaseFile file, List<Check> checks, List<Pair> pairs) throws UnreadableCase {
        return new CaseResult(
                file.name(), file.required("case"), file.required("source"), file.optional("notes"), checks, pairs);
    }

    /** True where every check was met. */
    public boolean passed() {
        return checks.stream().allMatch(Check::passed);
    }
}
