package throwline.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;

/**
 * Fall of the angle below the stall before lift comes back, from runs with rising and falling angle at one
 * speed. Immutable.
 */
final class StallHysteresis {

    /** As in {@link LiftStations} (methods manual 3.1). */
    private static final double SAME_SPEED = 0.08;

    /** Lift this far below the rising run's at the same angle is still stalled: four times the scatter of the runs. */
    private static final double STALLED = 0.08;

    private final double[] logReynolds;
    private final double[] below;

    private StallHysteresis(double[] logReynolds, double[] below) {
        this.logReynolds = logReynolds;
        this.below = below;
    }

    /** Hysteresis that an airfoil's runs at zero deflection tell. */
    static StallHysteresis of(Airfoil airfoil) {
        List<double[]> found = new ArrayList<>();
        for (PolarRun down : airfoil.runs()) {
            if (down.kind() == Kind.LIFT_DOWN && down.deflection() == 0) {
                airfoil.runs().stream()
                        .filter(up -> up.kind() == Kind.LIFT_UP
                                && up.deflection() == 0
                                && Math.abs(Math.log(up.reynolds() / down.reynolds())) < SAME_SPEED)
                        .findFirst()
                        .map(LiftRun::of)
                        .filter(LiftRun::reachesPeak)
                        .ifPresent(up ->
                                found.add(new double[] {Math.log(down.reynolds()), below(up, LiftRun.of(down))}));
            }
        }
        found.sort(Comparator.comparingDouble(pair -> pair[0]));
        return new StallHysteresis(
                found.stream().mapToDouble(pair -> pair[0]).toArray(),
                found.stream().mapToDouble(pair -> pair[1]).toArray());
    }

    /** Half way between the lowest stalled and the next recovered point of the falling run, below the stall, rad. */
    private static double below(LiftRun up, LiftRun down) {
        MonotoneCubic rising = MonotoneCubic.through(
                up.points().stream().mapToDouble(Point::alpha).toArray(),
                up.points().stream().mapToDouble(Point::lift).toArray());
        double stall = up.stall().alpha();
        for (int i = 1; i < down.points().size(); i++) {
            Point point = down.points().get(i);
            boolean attachedBelow = point.alpha() > 0.5 * stall;
            if (attachedBelow && point.alpha() <= stall && rising.value(point.alpha()) - point.lift() > STALLED) {
                return stall - 0.5 * (point.alpha() + down.points().get(i - 1).alpha());
            }
        }
        return 0;
    }

    /** Angle below the stall, rad; the nearest run's outside the measured speeds, empty where no pair was measured. */
    OptionalDouble belowStall(double reynolds) {
        if (below.length == 0) {
            return OptionalDouble.empty();
        }
        double at = Math.log(reynolds);
        int i = 1;
        while (i < below.length && logReynolds[i] < at) {
            i++;
        }
        if (i >= below.length || at <= logReynolds[i - 1]) {
            return OptionalDouble.of(below[i - 1]);
        }
        double share = (at - logReynolds[i - 1]) / (logReynolds[i] - logReynolds[i - 1]);
        return OptionalDouble.of(below[i - 1] + share * (below[i] - below[i - 1]));
    }
}
