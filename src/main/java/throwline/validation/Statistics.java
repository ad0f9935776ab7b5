package throwline.validation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/**
 * Errors of one figure with one basis.
 *
 * @param figure what was compared
 * @param basis what predictions rest on
 * @param values how many
 * @param groups of how many airfoils or aircraft
 * @param bias mean error, positive where predicted too large; share or degrees as the figure has it
 * @param scatter standard deviation of the errors
 * @param median of the errors' sizes
 * @param nineOfTen nine of ten errors are smaller in size
 * @param stated half-width of the band that the product states; empty where it states none
 * @param inside share of the errors inside that band; empty likewise
 */
public record Statistics(
        Figure figure,
        String basis,
        int values,
        int groups,
        double bias,
        double scatter,
        double median,
        double nineOfTen,
        Optional<Double> stated,
        Optional<Double> inside) {

    /** What bands are meant to hold. */
    public static final double STATED = 0.9;

    /** All figures and bases of these pairs, in the order of figures. */
    static List<Statistics> of(List<Pair> pairs, List<BandRow> bands) {
        Map<String, List<Pair>> kinds = new TreeMap<>(pairs.stream()
                .filter(p -> Double.isFinite(p.error()))
                .collect(Collectors.groupingBy(p -> p.figure().name() + " " + p.basis())));
        List<Statistics> all = new ArrayList<>();
        kinds.values().forEach(kind -> all.add(one(kind, bands)));
        all.sort(Comparator.comparing(Statistics::figure));
        return all;
    }

    private static Statistics one(List<Pair> pairs, List<BandRow> bands) {
        Pair first = pairs.get(0);
        SummaryStatistics errors = new SummaryStatistics();
        pairs.forEach(p -> errors.addValue(p.error()));
        Optional<Double> stated = bands.stream()
                .filter(b ->
                        b.quantity().equals(first.figure().key()) && b.basis().equals(first.basis()))
                .map(b -> b.half(first.figure()))
                .findFirst();
        return new Statistics(
                first.figure(),
                first.basis(),
                pairs.size(),
                (int) pairs.stream().map(Pair::group).distinct().count(),
                errors.getMean(),
                pairs.size() > 1 ? errors.getStandardDeviation() : 0,
                PairStudy.quantile(pairs, 0.5),
                PairStudy.quantile(pairs, STATED),
                stated,
                stated.map(band -> (double) pairs.stream()
                                .filter(p -> Math.abs(p.error()) <= band)
                                .count()
                        / pairs.size()));
    }
}
