package throwline.section.computed;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;

/**
 * Prediction of one figure: a linear rule fitted to the measured airfoils, and what it misses on the nearest of them, the
 * nearer the more (methods manual 3.12). What the rule gets wrong on them and on the wanted one alike cancels. Immutable.
 */
final class SectionRule {

    /** Weight of no neighbour at all: far from every measured airfoil the rule stands alone (PRACTICE). */
    private static final double ALONE = 0.5;

    private final SectionFigure figure;
    private final List<LearnedAirfoil> airfoils;
    private final double[] factors;
    private final List<double[]> missed = new ArrayList<>();

    private SectionRule(SectionFigure figure, List<LearnedAirfoil> airfoils, double[] factors) {
        this.figure = figure;
        this.airfoils = airfoils;
        this.factors = factors;
        for (LearnedAirfoil airfoil : airfoils) {
            double[] miss = new double[LearnedAirfoil.REYNOLDS.length];
            for (int i = 0; i < miss.length; i++) {
                miss[i] = figure.transformed(airfoil.measured(figure, i))
                        - rule(airfoil.traits(), LearnedAirfoil.REYNOLDS[i]);
            }
            missed.add(miss);
        }
    }

    /** The rule that these airfoils teach. */
    static SectionRule of(SectionFigure figure, List<LearnedAirfoil> airfoils) {
        List<double[]> rows = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (LearnedAirfoil airfoil : airfoils) {
            for (int i = 0; i < LearnedAirfoil.REYNOLDS.length; i++) {
                double reynolds = LearnedAirfoil.REYNOLDS[i];
                if (Double.isFinite(airfoil.measured(figure, i))) {
                    rows.add(figure.terms(airfoil.traits(), LearnedAirfoil.log(reynolds)));
                    values.add(
                            figure.transformed(airfoil.measured(figure, i)) - figure.known(airfoil.traits(), reynolds));
                }
            }
        }
        double[] right = values.stream().mapToDouble(Double::doubleValue).toArray();
        double[] factors = new QRDecomposition(new Array2DRowRealMatrix(rows.toArray(new double[0][]), false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        return new SectionRule(figure, airfoils, factors);
    }

    private double rule(SectionTraits traits, double reynolds) {
        double[] terms = figure.terms(traits, LearnedAirfoil.log(reynolds));
        double sum = figure.known(traits, reynolds);
        for (int i = 0; i < terms.length; i++) {
            sum += factors[i] * terms[i];
        }
        return sum;
    }

    /** The figure of an outline by the rule alone. */
    double alone(SectionTraits traits, double reynolds) {
        return figure.value(rule(traits, reynolds));
    }

    /** The figure of an outline at a Reynolds number. */
    double at(SectionTraits traits, double reynolds) {
        double weights = ALONE;
        double sum = 0;
        for (int i = 0; i < airfoils.size(); i++) {
            LearnedAirfoil airfoil = airfoils.get(i);
            double distance = traits.distance(airfoil.traits());
            double weight = Math.exp(-0.5 * distance * distance);
            double miss = LearnedAirfoil.between(missed.get(i), reynolds);
            weights += Double.isFinite(miss) ? weight : 0;
            sum += Double.isFinite(miss) ? weight * miss : 0;
        }
        return figure.value(rule(traits, reynolds) + sum / weights);
    }
}
