package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import throwline.correction.Expectation;
import throwline.correction.Posterior;
import throwline.correction.RowBand;

/** Lessons applied to numbers with their bands. */
final class LearntState {

    /** A band that fell below this share of what it was rests on the flights. */
    private static final double RESTS_ON_FLIGHTS = 0.8;

    /** Numerical floor for covariances in standard deviations before. */
    private static final double FLOOR = 1e-9;

    private final Posterior posterior;
    private final double wider;
    private final double[] sds;
    private final RealMatrix root;

    /**
     * @param posterior what is known of the state
     * @param wider factor on all standard deviations after
     */
    LearntState(Posterior posterior, double wider) {
        this.posterior = posterior;
        this.wider = wider;
        sds = posterior.priorSds();
        double[][] covariance = posterior.covariance();
        int n = sds.length;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] /= sds[i] * sds[j];
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double both = (covariance[i][j] + covariance[j][i]) / 2;
                covariance[i][j] = both;
                covariance[j][i] = both;
            }
            covariance[i][i] += FLOOR;
        }
        root = new CholeskyDecomposition(new Array2DRowRealMatrix(covariance, false), 1e-8, 1e-14).getL();
    }

    /** Means of the state after. */
    double[] mean() {
        return posterior.state().clone();
    }

    /** Means of the state before. */
    double[] means() {
        return posterior.priorMeans();
    }

    /**
     * A positive number whose errors are ratios.
     *
     * @param before the number before
     * @param row its logarithm
     * @param own variance that no reading tells anything of
     * @param repeats its band is not printed narrower than this share of it to either side
     * @param flown true where its set-up was flown
     */
    Headline.Known ratio(Headline.Known before, Expectation row, double own, double repeats, boolean flown) {
        RowBand band = RowBand.of(posterior, row, own, wider);
        double value = before.value() * Math.exp(band.after() - band.before());
        return printed(before, band, value, value / before.value(), repeats * value, row, own, value, flown);
    }

    /** A number whose errors add: the same with a floor in its own unit. */
    Headline.Known difference(Headline.Known before, Expectation row, double repeats, boolean flown) {
        RowBand band = RowBand.of(posterior, row, 0, wider);
        double value = before.value() + band.after() - band.before();
        return printed(before, band, value, 1, repeats, row, 0, 1, flown);
    }

    /** A number that follows from others by a law; what its band holds besides them stays. */
    Headline.Known derived(Headline.Known before, Expectation row, boolean flown) {
        double[] slopes = row.slopes(means(), sds);
        double structure = 0;
        for (int j = 0; j < sds.length; j++) {
            structure += Math.pow(slopes[j] * sds[j], 2);
        }
        double own = Math.max(0, Math.pow(PriorErrors.share(before) / RowBand.NINE_OF_TEN, 2) - structure);
        return ratio(before, row, own, 0, flown);
    }

    private Headline.Known printed(
            Headline.Known before,
            RowBand band,
            double value,
            double scale,
            double repeats,
            Expectation row,
            double own,
            double unit,
            boolean flown) {
        double down = (before.value() - before.low())
                * scale
                * (band.after() - band.lowAfter())
                / (band.before() - band.low());
        double up = (before.high() - before.value())
                * scale
                * (band.highAfter() - band.after())
                / (band.high() - band.before());
        double least = Math.min(repeats, Math.max(before.high() - before.value(), before.value() - before.low()));
        double low = value - Math.max(down, Math.min(least, before.value() - before.low()));
        double high = value + Math.max(up, Math.min(least, before.high() - before.value()));
        Headline.Basis basis = band.left() < RESTS_ON_FLIGHTS ? Headline.Basis.FLOWN : before.basis();
        return new Headline.Known(
                value,
                Math.min(low, value),
                Math.max(high, value),
                basis,
                before.shared(),
                Optional.of(new Headline.FromFlights(
                        before.value(), before.low(), before.high(), flown, errors(row, unit), unit * Math.sqrt(own))));
    }

    /** Errors of a row along independent directions of the state. */
    private List<Double> errors(Expectation row, double unit) {
        double[] slopes = row.slopes(posterior.state(), sds);
        List<Double> errors = new ArrayList<>();
        for (int k = 0; k < sds.length; k++) {
            double sum = 0;
            for (int i = k; i < sds.length; i++) {
                sum += slopes[i] * sds[i] * root.getEntry(i, k);
            }
            errors.add(wider * unit * sum);
        }
        return errors;
    }

    /** A number that follows from a learnt one with this slope, and what it was before. */
    static Headline.Known withBefore(Headline.Known number, Headline.Known before, Headline.Known from, double slope) {
        return new Headline.Known(
                number.value(),
                number.low(),
                number.high(),
                from.basis(),
                number.shared(),
                from.learnt()
                        .map(learnt -> new Headline.FromFlights(
                                before.value(),
                                before.low(),
                                before.high(),
                                learnt.flown(),
                                learnt.errors().stream().map(e -> slope * e).toList(),
                                Math.abs(slope) * learnt.own())));
    }
}
