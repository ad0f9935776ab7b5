package throwline.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import throwline.correction.Doubt.Cause;

/** Readings that contradict the rest, and what may have happened. Nothing is put right by itself. Methods manual 21.2. */
public final class Doubts {

    /** A value that would fit so well after a slip is put right, in standard deviations (PRACTICE). */
    private static final double FITS = 1.5;

    private static final Map<Cause, Double> SLIPS = slips();
    private static final int MOST_CAUSES = 3;
    private static final double CHANCE = 0.99;

    private final Posterior posterior;
    private final List<Reading> readings;
    private final Linearised before;
    private final double[] means;

    /**
     * @param posterior what was learnt
     * @param readings from these, in their order
     */
    public Doubts(Posterior posterior, List<Reading> readings) {
        this.posterior = posterior;
        this.readings = List.copyOf(readings);
        means = posterior.priorMeans();
        before = Linearised.at(means, means, posterior.priorSds(), readings);
    }

    private static Map<Cause, Double> slips() {
        Map<Cause, Double> slips = new LinkedHashMap<>();
        slips.put(Cause.KILOMETRES_AN_HOUR, 3.6);
        slips.put(Cause.MILES, 1.609344);
        slips.put(Cause.FEET, 1 / 0.3048);
        slips.put(Cause.INCHES, 25.4);
        slips.put(Cause.DIGIT, 10.0);
        return slips;
    }

    /** Doubted sources, the worst first. */
    public List<Doubt> all() {
        List<Doubt> doubts = new ArrayList<>();
        posterior.wrong().forEach((source, wrong) -> {
            boolean habit = place(source) >= 0
                    && posterior.factors().get(place(source)).habit().isPresent();
            if (wrong > (habit ? Doubt.CONTRADICTS : Doubt.DOUBTED)) {
                doubts.add(
                        habit
                                ? new Doubt(source, wrong, moved(source), List.of(Cause.BROKEN_OFF))
                                : doubt(source, wrong));
            }
        });
        doubts.sort(Comparator.comparingDouble((Doubt doubt) -> -doubt.wrong()).thenComparing(Doubt::source));
        return doubts;
    }

    private Doubt doubt(String source, double wrong) {
        int worst = -1;
        for (int i = 0; i < readings.size(); i++) {
            if (readings.get(i).source().equals(source) && (worst < 0 || Math.abs(miss(i)) > Math.abs(miss(worst)))) {
                worst = i;
            }
        }
        if (worst < 0) {
            return new Doubt(
                    source, wrong, moved(source), List.of(source.startsWith("wind") ? Cause.WIND : Cause.SENSOR));
        }
        return new Doubt(source, wrong, miss(worst), causes(worst));
    }

    /** By how many of its standard deviations before a factor moved. */
    private double moved(String factor) {
        int place = place(factor);
        return (posterior.state()[place] - means[place]) / posterior.priorSds()[place];
    }

    private int place(String factor) {
        return posterior.factors().stream().map(Factor::name).toList().indexOf(factor);
    }

    private double miss(int reading) {
        return posterior.misses().get(reading);
    }

    private List<Cause> causes(int i) {
        Reading reading = readings.get(i);
        List<Cause> causes = new ArrayList<>();
        if (turnedWindFits(i)) {
            causes.add(Cause.WIND_TURNED);
        }
        double expected = reading.expected().at(means);
        double sd = before.expectedSd(i);
        if (Math.abs(-reading.value() - expected) < FITS * sd && Math.abs(reading.value()) > sd) {
            causes.add(Cause.SIGN);
        }
        SLIPS.forEach((cause, factor) -> {
            if (reading.value() > 0
                    && expected > 0
                    && (Math.abs(reading.value() * factor - expected) < FITS * sd
                            || Math.abs(reading.value() / factor - expected) < FITS * sd)) {
                causes.add(cause);
            }
        });
        causes.add(Cause.DESCRIPTION);
        return causes.subList(0, Math.min(MOST_CAUSES, causes.size()));
    }

    /** Whether a reading would fit if it had been told with the wind the wrong way round. */
    private boolean turnedWindFits(int i) {
        double[] turned = means.clone();
        boolean any = false;
        for (int j = 0; j < turned.length; j++) {
            Factor factor = posterior.factors().get(j);
            if (factor.name().startsWith("wind of ") && before.slopes()[i][j] != 0 && factor.mean() > 0) {
                turned[j] = -turned[j];
                any = true;
            }
        }
        return any
                && Math.abs(readings.get(i).value() - readings.get(i).expected().at(turned))
                        < FITS * before.expectedSd(i);
    }

    /** True where two sources or more are doubted and all are off the same way: the description may be wrong. */
    public boolean allOneWay() {
        List<Doubt> doubts = all().stream()
                .filter(doubt -> readings.stream().anyMatch(r -> r.source().equals(doubt.source())))
                .toList();
        return doubts.size() > 1
                && (doubts.stream().allMatch(d -> d.misses() > 0)
                        || doubts.stream().allMatch(d -> d.misses() < 0));
    }

    /**
     * Factor on all standard deviations after: 1 as long as what the readings missed by is no more than chance brings one time
     * in a hundred, else the root of the square over its expected size (R. T. Birge, MEMORY).
     */
    public double wider() {
        int n = posterior.readings();
        if (n == 0 || posterior.square() <= new ChiSquaredDistribution(n).inverseCumulativeProbability(CHANCE)) {
            return 1;
        }
        return Math.sqrt(posterior.square() / n);
    }
}
