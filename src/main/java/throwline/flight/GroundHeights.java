package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import throwline.liftingline.ChordCorrection;
import throwline.liftingline.Ground;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.SpanGrid;

/**
 * The few heights at which a model is solved with its image below the ground. What the ground does is a smooth function of
 * nearness, the lowest height of the wing over its height, from 1 with the wheels on the ground to 0 in free air; between the
 * rungs a parabola through all of them holds (its error is measured in a test). Made once for a model; immutable.
 */
public final class GroundHeights {

    /**
     * Rungs by nearness: wheels on the ground, one between, free air; NearGroundTest has the error (methods manual
     * 10.5).
     */
    private static final double[] NEARNESS = {1, 0.4, 0};

    /**
     * The image is not brought closer than this, in mean chords: the loss of speed by the bound image was compared with an
     * independent figure down to 0.63 chords (COMPUTED, methods manual 6.6); at a third of a chord the lifting line ends.
     */
    private static final double LOWEST = 0.6;

    private final double stance;
    private final double lowest;
    private final List<InfluenceMatrix> matrices = new ArrayList<>();

    /** The ladder of a model. */
    public GroundHeights(Airframe airframe) {
        stance = GroundStance.wingAboveWheels(airframe.model());
        SpanGrid grid = airframe.strips().grid();
        lowest = Math.max(stance, LOWEST * grid.meanChord());
        for (double nearness : NEARNESS) {
            matrices.add(
                    nearness == 0
                            ? airframe.influence()
                            : new InfluenceMatrix(grid, new Ground(lowest / nearness, true), ChordCorrection.of(grid)));
        }
    }

    /** Height of the wing above the ground with the wheels on it, m. */
    double stance() {
        return stance;
    }

    int size() {
        return NEARNESS.length;
    }

    /** True for the rung in free air. */
    boolean isFree(int rung) {
        return NEARNESS[rung] == 0;
    }

    /** The wing's influence matrix at a rung. */
    InfluenceMatrix matrix(int rung) {
        return matrices.get(rung);
    }

    /**
     * True where the landed wing is lower than the lowest height that is solved: its ground effect is that of the
     * latter.
     */
    public boolean isHeldHigher() {
        return stance < lowest;
    }

    /**
     * Weights of the rungs at a height.
     *
     * @param height of the wheels above the ground, m, not negative; infinite for free air
     * @return one weight a rung, their sum 1
     */
    double[] weights(double height) {
        double at = lowest / Math.max(lowest, stance + height);
        double[] weights = new double[NEARNESS.length];
        for (int i = 0; i < weights.length; i++) {
            double weight = 1;
            for (int j = 0; j < weights.length; j++) {
                weight *= i == j ? 1 : (at - NEARNESS[j]) / (NEARNESS[i] - NEARNESS[j]);
            }
            weights[i] = weight;
        }
        return weights;
    }
}
