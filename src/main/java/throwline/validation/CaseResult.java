package throwline.validation;

import java.util.List;

/**
 * Result of one case.
 *
 * @param name file name without extension
 * @param title what it is, one line
 * @param source where the values come from
 * @param notes what was assumed, and what is known about failures
 * @param checks the values that must be met
 * @param pairs values for the statistics
 * @param traces measured points and predictions, for pictures
 */
public record CaseResult(
        String name,
        String title,
        String source,
        String notes,
        List<Check> checks,
        List<Pair> pairs,
        List<CaseTrace> traces) {

    public CaseResult {
        checks = List.copyOf(checks);
        pairs = List.copyOf(pairs);
        traces = List.copyOf(traces);
    }

    static CaseResult of(CaseFile file, List<Check> checks, List<Pair> pairs) throws UnreadableCase {
        return of(file, checks, pairs, List.of());
    }

    static CaseResult of(CaseFile file, List<Check> checks, List<Pair> pairs, List<CaseTrace> traces)
            throws UnreadableCase {
        return new CaseResult(
                file.name(),
                file.required("case"),
                file.required("source"),
                file.optional("notes"),
                checks,
                pairs,
                traces);
    }

    /** True where every check was met. */
    public boolean passed() {
        return checks.stream().allMatch(Check::passed);
    }
}
