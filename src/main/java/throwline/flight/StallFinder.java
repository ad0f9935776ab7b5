package throwline.flight;

import java.util.Optional;
import java.util.Set;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StallReading;
import throwline.model.Pack;
import throwline.model.Surface;

/**
 * Finds the stall: walks up in angle of attack with the model balanced at every step, until half of the wing is past its
 * stall or the elevator is at its stop; repeats at the speed found, because the Reynolds number follows it.
 */
final class StallFinder {

    private static final double STEP = Math.toRadians(1);
    private static final double HEAD_START = Math.toRadians(4);
    private static final int MOST_STEPS = 40;
    private static final int MOST_PASSES = 6;
    private static final double SPEED_TOLERANCE = 1e-3;
    private static final double FIRST_GUESS_OF_LIFT = 1.2;
    private static final int HALVINGS = 10;

    private final Trimmer trimmer;
    private final Set<String> ailerons;

    /**
     * @param trimmer the model in its set-up
     * @param ailerons names of the surfaces that roll it
     */
    StallFinder(Trimmer trimmer, Set<String> ailerons) {
        this.trimmer = trimmer;
        this.ailerons = ailerons;
    }

    /** The stall; empty where the walk found none within 40 degrees or the speed did not settle. */
    Optional<Stall> find(Pack pack) {
        double speed = speedFor(pack, FIRST_GUESS_OF_LIFT);
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            Optional<Walk> walk = new Walk(pack, speed).go();
            if (walk.isEmpty()) {
                return Optional.empty();
            }
            double next = speedFor(pack, walk.get().bestLift);
            if (Math.abs(next - speed) < SPEED_TOLERANCE * speed) {
                return Optional.of(walk.get().result());
            }
            speed = next;
        }
        return Optional.empty();
    }

    private double speedFor(Pack pack, double lift) {
        return trimmer.airframe().balance(pack).stallSpeed(lift);
    }

    /** One walk at one speed. */
    private final class Walk {
        private final Pack pack;
        private final double speed;
        private double bestLift = Double.NEGATIVE_INFINITY;
        private Optional<Attitude> best = Optional.empty();
        private double onsetLift = Double.NaN;
        private double plateauLift = Double.NaN;
        private boolean elevatorLimited;
        private int firstStrip;
        private double reserve;

        Walk(Pack pack, double speed) {
            this.pack = pack;
            this.speed = speed;
        }

        Optional<Walk> go() {
            double alpha = start();
            Optional<Step> before = Optional.empty();
            for (int k = 0; k < MOST_STEPS; k++) {
                Step here = new Step(trimmer.at(pack, speed, alpha));
                if (here.attitude.elevatorLimit() == ElevatorLimit.UP && before.isPresent()) {
                    endAtStop(before.get(), here);
                    return Optional.of(this);
                }
                take(here.attitude);
                before.ifPresent(b -> marks(b, here));
                if (!Double.isNaN(plateauLift) && !Double.isNaN(onsetLift)) {
                    refine();
                    return best.isPresent() ? Optional.of(this) : Optional.empty();
                }
                before = Optional.of(here);
                alpha += STEP;
            }
            return Optional.empty();
        }

        /** An angle safely below the onset: a strip's own angle rises more slowly than the body's. */
        private double start() {
            double margin = StallReading.of(trimmer.wing(speed, 0)).margin();
            return margin > 0 ? margin - HEAD_START : 2 * margin - HEAD_START;
        }

        private void take(Attitude attitude) {
            if (attitude.converged() && attitude.lift() > bestLift) {
                bestLift = attitude.lift();
                best = Optional.of(attitude);
            }
        }

        private void marks(Step before, Step here) {
            if (Double.isNaN(onsetLift) && before.reading.margin() > 0 && here.reading.margin() <= 0) {
                double share = before.reading.margin() / (before.reading.margin() - here.reading.margin());
                onsetLift = between(before.attitude.lift(), here.attitude.lift(), share);
                firstStrip = here.reading.strip();
                reserve = reserve(here.attitude.wing());
            }
            if (Double.isNaN(plateauLift) && here.reading.stalledShare() >= 0.5) {
                double rise = here.reading.stalledShare() - before.reading.stalledShare();
                double share = rise > 0 ? Math.max(0, (0.5 - before.reading.stalledShare()) / rise) : 1;
                plateauLift = between(before.hullLift(), here.hullLift(), share);
            }
        }

        /** Two steps of a parabola through the highest point and its neighbours. */
        private void refine() {
            double step = STEP / 2;
            for (int k = 0; k < 2; k++) {
                double middle = best.orElseThrow().alpha();
                take(trimmer.at(pack, speed, middle - step));
                take(trimmer.at(pack, speed, middle + step));
                step /= 2;
            }
        }

        private void endAtStop(Step before, Step here) {
            double low = before.attitude.alpha();
            double high = here.attitude.alpha();
            Attitude last = before.attitude;
            for (int k = 0; k < HALVINGS; k++) {
                Attitude middle = trimmer.at(pack, speed, (low + high) / 2);
                if (middle.elevatorLimit() == ElevatorLimit.UP) {
                    high = middle.alpha();
                } else {
                    low = middle.alpha();
                    last = middle;
                }
            }
            take(last);
            elevatorLimited = true;
            if (Double.isNaN(onsetLift)) {
                StallReading reading = StallReading.of(last.wing());
                onsetLift = bestLift;
                firstStrip = reading.strip();
                reserve = reserve(last.wing());
            }
            plateauLift = bestLift;
        }

        /** Angle left in front of the ailerons less the least angle left elsewhere. */
        private double reserve(LiftingLineSolution wing) {
            SpanGrid grid = wing.grid();
            double atAilerons = Double.POSITIVE_INFINITY;
            double elsewhere = Double.POSITIVE_INFINITY;
            for (int i = 0; i < grid.size(); i++) {
                double margin = StallReading.averageMargin(wing, i);
                Optional<Surface> surface = trimmer.airframe().strips().surface(i);
                if (surface.isPresent() && ailerons.contains(surface.get().name())) {
                    atAilerons = Math.min(atAilerons, margin);
                } else {
                    elsewhere = Math.min(elsewhere, margin);
                }
            }
            return atAilerons - elsewhere;
        }

        private Stall result() {
            double stall = speedFor(pack, bestLift);
            double onset = speedFor(pack, Math.min(onsetLift, bestLift));
            double plateau = speedFor(pack, Math.max(plateauLift, bestLift));
            return new Stall(stall, onset, plateau, elevatorLimited, best.orElseThrow(), firstStrip, reserve);
        }

        private double between(double a, double b, double share) {
            return a + share * (b - a);
        }
    }

    /** One step of a walk. */
    private static final class Step {
        private final Attitude attitude;
        private final StallReading reading;

        Step(Attitude attitude) {
            this.attitude = attitude;
            reading = StallReading.of(attitude.wing());
        }

        /** Lift coefficient if no section lost lift past its stall. */
        private double hullLift() {
            LiftingLineSolution wing = attitude.wing();
            SpanGrid grid = wing.grid();
            throwline.liftingline.StripForces forces = throwline.liftingline.StripForces.of(wing);
            double lost = 0;
            for (int i = 0; i < grid.size(); i++) {
                double speed = wing.speed(i);
                lost += speed * speed * grid.chord(i) * grid.width(i) * wing.lift(i) - forces.lift(i);
            }
            return attitude.lift() + lost / grid.area();
        }
    }
}
