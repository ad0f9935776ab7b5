package throwline.flight;

import java.util.Optional;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;

/** Pulls of a model in a set-up out of one straight flight, whatever its motor does. */
final class PullFlight {

    /** A pull is looked at from this far below straight flight, further where the stick lowers flaps, rad. */
    private static final double BELOW = Math.toRadians(1);

    private static final double BELOW_FLAPPED = Math.toRadians(6);

    private final Airframe airframe;
    private final SetUp setUp;
    private final Trimmer trimmer;
    private final Optional<Throttle> throttle;
    private final Pack pack;
    private final Attitude straight;

    /**
     * @param trimmer the model in the set-up, its motor as here
     * @param throttle what its motor does; empty where it stands
     * @param straight flight for which the elevator is trimmed
     */
    PullFlight(
            Airframe airframe,
            SetUp setUp,
            Trimmer trimmer,
            Optional<Throttle> throttle,
            Pack pack,
            Attitude straight) {
        this.airframe = airframe;
        this.setUp = setUp;
        this.trimmer = trimmer;
        this.throttle = throttle;
        this.pack = pack;
        this.straight = straight;
    }

    private static boolean moves(Stick.Pull stick) {
        return stick.deflections().values().stream().anyMatch(d -> d != 0);
    }

    /** The model with a stick at full. */
    Trimmer pulled(Stick.Pull stick) {
        if (!moves(stick)) {
            return trimmer.fresh();
        }
        Trimmer shut = new Trimmer(airframe, Deflections.of(airframe.model().wing(), setUp, stick, 1));
        return throttle.map(shut::with).orElse(shut);
    }

    /** The tightest pull with a stick at full; empty where the wing's most lift was not found. */
    Optional<PullUpSearch.Reached> tightest(PullUpSearch.Path path, Stick.Pull stick) {
        double trim = straight.elevator();
        double stop = -airframe.model().tail().elevator().travelUp();
        double from = straight.alpha() - (moves(stick) ? BELOW_FLAPPED : BELOW);
        PullUpSearch walk = new PullUpSearch(path, pulled(stick), pack, straight.speed(), from);
        return walk.found()
                ? Optional.of(walk.limits(trim, Math.max(stop, trim + stick.elevator())))
                : Optional.empty();
    }
}
