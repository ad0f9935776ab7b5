package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.linkage.ServoBlowBack;
import throwline.linkage.ServoBlowBack.Rest;

/**
 * Surfaces that yield to the air together: each rests where its servo and the air balance, while the air's moment on it
 * depends on where all of them stand.
 *
 * <p>The moments are solved at five places on the way of all surfaces from neutral to where they are told to stand. On the
 * straight lines between these each surface has its own balance ({@link ServoBlowBack}); then the moments are solved there,
 * the lines of each surface shifted to meet them, and so on until no surface moves by more than a hundredth of a degree.
 * So the lines only guide the search, and may come from air near by: at the end servo and air balance with moments solved
 * at the very angles.
 */
final class BlowBackSolver {

    /** Surfaces rest where they were before to this, rad. */
    static final double TOLERANCE = Math.toRadians(0.01);

    private static final int MOST_ROUNDS = 15;
    private static final int PARTS = 4;

    /** The least way over which the moments are looked at, rad. */
    private static final double LEAST_WAY = Math.toRadians(3);

    private final List<Told> all;

    /**
     * @param all the surfaces, in the order of the moments
     */
    BlowBackSolver(List<Told> all) {
        this.all = List.copyOf(all);
    }

    /**
     * One surface.
     *
     * @param held how it is held
     * @param angle where the servo brings it with nothing pushing, rad
     */
    record Told(ServoBlowBack held, double angle) {}

    /** Hinge moments, N m, at the surfaces' angles, rad; empty where they were not found. */
    interface Moments {
        Optional<double[]> at(double[] angles);
    }

    /** How the moments run over the angles, on the way from neutral to where each surface is told to stand. */
    static final class Lines {
        /** First by place, then by surface. */
        private final double[][] moments;

        private final double factor;

        private Lines(double[][] moments, double factor) {
            this.moments = moments;
            this.factor = factor;
        }

        /** The same in air that pushes so many times as hard. */
        Lines times(double more) {
            return new Lines(moments, factor * more);
        }

        private double at(int place, int surface) {
            return factor * moments[place][surface];
        }
    }

    /** How these moments run; empty where they were not found. */
    Optional<Lines> lines(Moments moments) {
        double[][] found = new double[PARTS + 1][];
        for (int k = 0; k <= PARTS; k++) {
            Optional<double[]> there = moments.at(places(k));
            if (there.isEmpty()) {
                return Optional.empty();
            }
            found[k] = there.get();
        }
        return Optional.of(new Lines(found, 1));
    }

    /**
     * Where they rest, in their order; empty where the moments were not found or the surfaces did not settle.
     *
     * @param lines how the moments run over the angles
     * @param exact the moments at angles near to the answer
     */
    Optional<List<Rest>> rest(Lines lines, Moments exact) {
        double[] shift = new double[all.size()];
        List<Rest> rests = rests(lines, shift);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Optional<double[]> there = exact.at(angles(rests));
            if (there.isEmpty()) {
                return Optional.empty();
            }
            for (int i = 0; i < shift.length; i++) {
                shift[i] = there.get()[i] - line(lines, i, rests.get(i).angle());
            }
            List<Rest> next = rests(lines, shift);
            double moved = 0;
            for (int i = 0; i < shift.length; i++) {
                moved = Math.max(
                        moved, Math.abs(next.get(i).angle() - rests.get(i).angle()));
            }
            rests = next;
            if (moved <= TOLERANCE) {
                return Optional.of(rests);
            }
        }
        return Optional.empty();
    }

    private double[] places(int part) {
        return all.stream().mapToDouble(told -> place(told.angle(), part)).toArray();
    }

    /** From neutral to the angle; from further off where that is near to neutral. */
    private static double place(double angle, int part) {
        double way = Math.copySign(Math.max(Math.abs(angle), LEAST_WAY), angle);
        return angle - way * (PARTS - part) / PARTS;
    }

    private List<Rest> rests(Lines lines, double[] shift) {
        List<Rest> rests = new ArrayList<>();
        for (int i = 0; i < shift.length; i++) {
            int surface = i;
            Told told = all.get(i);
            rests.add(told.held().at(told.angle(), angle -> line(lines, surface, angle) + shift[surface]));
        }
        return rests;
    }

    private double line(Lines lines, int surface, double angle) {
        double told = all.get(surface).angle();
        double from = place(told, 0);
        double part = PARTS * (angle - from) / (told - from);
        int k = Math.max(0, Math.min(PARTS - 1, (int) part));
        return lines.at(k, surface) + (part - k) * (lines.at(k + 1, surface) - lines.at(k, surface));
    }

    private static double[] angles(List<Rest> rests) {
        return rests.stream().mapToDouble(Rest::angle).toArray();
    }
}
