package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Checks on many pairs together: medians of their errors, and how many of them bands hold that were made without them. */
final class PairStudy {

    private final List<Pair> pairs;

    PairStudy(List<Pair> pairs) {
        this.pairs = List.copyOf(pairs);
    }

    /**
     * The checks of a study. Columns: {@code quantity} is {@code median error} or {@code share inside}; {@code figure}, a key
     * of the file of bands, with or without {@code .slow}; {@code basis}, empty for all.
     */
    List<Check> checks(List<CaseRow> rows) throws UnreadableCase {
        List<Check> checks = new ArrayList<>();
        for (CaseRow row : rows) {
            checks.add(Check.of(row, read(row)));
        }
        return checks;
    }

    private double read(CaseRow row) throws UnreadableCase {
        Predicate<Pair> basis = p -> !row.has("basis") || p.basis().equals(row.text("basis"));
        List<Pair> wanted = pairs.stream()
                .filter(p -> (p.figure().key() + ".").startsWith(row.text("figure") + "."))
                .filter(basis)
                .toList();
        if (wanted.isEmpty()) {
            throw row.wrong("figure", "case.figure");
        }
        return switch (row.text("quantity")) {
            case "median error" -> quantile(wanted, 0.5);
            case "share inside" -> shareInside(wanted);
            default -> throw row.wrong("quantity", "case.quantity");
        };
    }

    /** Share of the pairs that nine of ten errors of the other groups, same figure and basis, would hold. */
    private static double shareInside(List<Pair> wanted) {
        Map<String, List<Pair>> byKind = wanted.stream().collect(Collectors.groupingBy(p -> p.figure() + p.basis()));
        double held = 0;
        for (List<Pair> kind : byKind.values()) {
            for (Map.Entry<String, List<Pair>> group :
                    kind.stream().collect(Collectors.groupingBy(Pair::group)).entrySet()) {
                List<Pair> others = kind.stream()
                        .filter(p -> !p.group().equals(group.getKey()))
                        .toList();
                double band = quantile(others, Statistics.STATED);
                held += group.getValue().stream()
                        .filter(p -> Math.abs(p.error()) <= band)
                        .count();
            }
        }
        return held / wanted.size();
    }

    /** A share of the sizes of errors in rising order: 0.5 for the median. */
    static double quantile(List<Pair> pairs, double share) {
        double[] sizes =
                pairs.stream().mapToDouble(p -> Math.abs(p.error())).sorted().toArray();
        return sizes.length == 0 ? Double.NaN : sizes[Math.min(sizes.length - 1, (int) (share * sizes.length))];
    }
}
