package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import throwline.model.Pack;

/** The balanced model near the ground at one speed: curves at every rung of the ladder, blended at a height. */
final class GroundPolar implements NearGroundPolar {

    private final GroundHeights ladder;
    private final List<HeightPolar> rungs = new ArrayList<>();
    private final double scale;
    private final Attitude rolling;

    /**
     * Solves the model at all rungs.
     *
     * @param trimmer the model in free air
     * @param ladder its heights
     * @param pack with this battery
     * @param approach the steady approach: its speed gives the Reynolds number
     * @param stall the stall in free air
     */
    GroundPolar(Trimmer trimmer, GroundHeights ladder, Pack pack, Attitude approach, Stall stall) {
        this.ladder = ladder;
        Trimmer onTheGround = trimmer.near(ladder.matrix(0));
        for (int j = 0; j < ladder.size(); j++) {
            Trimmer there = j == 0 ? onTheGround : ladder.isFree(j) ? trimmer : trimmer.near(ladder.matrix(j));
            rungs.add(new HeightPolar(there, pack, approach.speed(), approach.alpha()));
        }
        // The stall was found at its own, lower speed: all limits are scaled so that the one in free air is that one.
        scale = stall.attitude().lift() / rungs.get(rungs.size() - 1).limit();
        rolling = onTheGround.at(pack, approach.speed(), 0);
    }

    /** False where some part is not a solution. */
    boolean converged() {
        return rolling.converged() && rungs.stream().allMatch(HeightPolar::converged);
    }

    /** The balanced model rolling on its wheels, body level. */
    Attitude rolling() {
        return rolling;
    }

    /** True where the elevator's travel ends before the wing lets go with the wheels at the ground. */
    boolean limitedByElevator() {
        return rungs.get(0).limitedByElevator();
    }

    @Override
    public double limit(double height) {
        return scale * blend(height, HeightPolar::limit);
    }

    @Override
    public double drag(double lift, double height) {
        return blend(height, rung -> rung.drag(lift));
    }

    /** Where the elevator stands at a lift coefficient and height, rad. */
    double elevator(double lift, double height) {
        return blend(height, rung -> rung.elevator(lift));
    }

    private double blend(double height, ToDoubleFunction<HeightPolar> value) {
        double[] weights = ladder.weights(height);
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            if (weights[j] != 0) {
                sum += weights[j] * value.applyAsDouble(rungs.get(j));
            }
        }
        return sum;
    }
}
