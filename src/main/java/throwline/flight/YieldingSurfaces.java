package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.linkage.HeldSurface;
import throwline.linkage.HeldSurface.Rest;

/**
 * Surfaces that yield to the air together: each rests where its servo and the air balance, while the air's moment on it
 * depends on where all of them stand.
 *
 * <p>The moments are solved at five places on the way of all surfaces from neutral to where they are told to stand. On the
 * straight lines between these each surface has its own balance ({@link HeldSurface}); then the moments are solved there,
 * the lines of each surface shifted to meet them, and so on until no surface moves by more than a hundredth of a degree.
 * So the lines only guide the search: at the end servo and air balance with moments solved at the very angles.
 */
final class YieldingSurfaces {

    /** Surfaces rest where they were before to this, rad. */
    static final double TOLERANCE = Math.toRadians(0.01);

    private static final int MOST_ROUNDS = 15;
    private static final int PARTS = 4;

    /** The least way over which the moments are looked at, rad. */
    private static final double LEAST_WAY = Math.toRadians(3);

    private final List<Told> all;
    private final Moments shape;
    private final Moments exact;

    /**
     * @param all the surfaces, in the order of the moments
     * @param shape how the moments run over the angles
     * @param exact the moments at angles near to the answer
     */
    YieldingSurfaces(List<Told> all, Moments shape, Moments exact) {
        this.all = List.copyOf(all);
        this.shape = shape;
        this.exact = exact;
    }

    /**
     * One surface.
     *
     * @param held how it is held
     * @param angle where the servo brings it with nothing pushing, rad
     */
    record Told(HeldSurface held, double angle) {}

    /** Hinge moments, N m, at the surfaces' angles, rad; empty where they were not found. */
    interface Moments {
        Optional<double[]> at(double[] angles);
    }

    /** Where they rest, in their order; empty where the moments were not found or the surfaces did not settle. */
    Optional<List<Rest>> rest() {
        double[][] moments = new double[PARTS + 1][];
        for (int k = 0; k <= PARTS; k++) {
            Optional<double[]> found = shape.at(places(k));
            if (found.isEmpty()) {
                return Optional.empty();
            }
            moments[k] = found.get();
        }
        double[] shift = new double[all.size()];
        List<Rest> rests = rests(moments, shift);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Optional<double[]> there = exact.at(angles(rests));
            if (there.isEmpty()) {
                return Optional.empty();
            }
            for (int i = 0; i < shift.length; i++) {
                shift[i] = there.get()[i] - line(moments, i, rests.get(i).angle());
            }
            List<Rest> next = rests(moments, shift);
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

    private List<Rest> rests(double[][] moments, double[] shift) {
        List<Rest> rests = new ArrayList<>();
        for (int i = 0; i < shift.length; i++) {
            int surface = i;
            Told told = all.get(i);
            rests.add(told.held().at(told.angle(), angle -> line(moments, surface, angle) + shift[surface]));
        }
        return rests;
    }

    private double line(double[][] moments, int surface, double angle) {
        double told = all.get(surface).angle();
        double from = place(told, 0);
        double part = PARTS * (angle - from) / (told - from);
        int k = Math.max(0, Math.min(PARTS - 1, (int) part));
        return moments[k][surface] + (part - k) * (moments[k + 1][surface] - moments[k][surface]);
    }

    private static double[] angles(List<Rest> rests) {
        return rests.stream().mapToDouble(Rest::angle).toArray();
    }
}
