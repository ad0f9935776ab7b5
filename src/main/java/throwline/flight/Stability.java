package throwline.flight;

import java.util.Optional;
import throwline.model.Pack;

/**
 * Static stability of the balanced model with the elevator held: how the moment answers to lift, by a central difference
 * of half a degree of incidence with the whole model, wake and drag included (methods manual 7.5).
 *
 * @param margin distance of the balance point ahead of the neutral point, over the mean chord; positive is stable
 * @param neutralPoint behind the wing's leading edge at the middle, m
 */
public record Stability(double margin, double neutralPoint) {

    private static final double STEP = Math.toRadians(0.5);

    /** Empty where one of the two neighbours is not a solution. */
    static Optional<Stability> of(Trimmer trimmer, Pack pack, Attitude attitude) {
        Attitude more = trimmer.heldAt(pack, attitude.speed(), attitude.alpha() + STEP, attitude.elevator());
        Attitude less = trimmer.heldAt(pack, attitude.speed(), attitude.alpha() - STEP, attitude.elevator());
        if (!more.converged() || !less.converged()) {
            return Optional.empty();
        }
        double margin = -(more.moments().total() - less.moments().total()) / (more.lift() - less.lift());
        double chord = trimmer.airframe().model().wing().meanAerodynamicChord();
        return Optional.of(new Stability(margin, pack.balance() + margin * chord));
    }
}
