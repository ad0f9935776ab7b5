package throwline.flight;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.liftingline.AngleWalk;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StallReading;
import throwline.liftingline.StripForces;
import throwline.model.Pack;
import throwline.model.Surface;
import throwline.section.SectionCurve;

/**
 * Search for the stall: a walk up in angle of attack with the model balanced at every step, until half of the wing is past
 * its stall or the elevator is at its stop; repeated at the speed found, because the Reynolds number follows it.
 */
final class StallFinder {

    private static final double STEP = Math.toRadians(1);
    private static final double HEAD_START = Math.toRadians(3);
    private static final int MOST_STEPS = 40;
    private static final int MOST_PASSES = 12;
    private static final double SPEED_TOLERANCE = 5e-4;
    private static final double FIRST_GUESS_OF_LIFT = 1.2;

    /** Share that a trimmed model carries of its sections' largest lift, as a start: the search itself finds the answer. */
    private static final double SHARE_OF_SECTIONS = 0.93;

    /** Angles of attack nearer than this are one, rad. */
    private static final double NEAREST = 3e-5;

    /** Share of the most lift from which a top is looked at, as in {@link AngleWalk#stall}. */
    private static final double NEARLY_ALL = 0.99;

    /** Share of the most lift found from which another top is looked at more closely: between two steps it may be higher. */
    private static final double NEARLY_TOP = 0.95;

    /** The elevator's stop limits a speed where more travel would lower it by this share at least. */
    private static final double COSTS = 0.02;

    /** First guess of the moment coefficient per rad of angle of attack, elevator held. */
    private static final double USUAL_STABILITY = -1;

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
        SpeedStep walk = new SpeedStep(
                pack, speedFor(pack, SHARE_OF_SECTIONS * sectionLift(speedFor(pack, FIRST_GUESS_OF_LIFT))));
        boolean found = walk.go();
        for (int pass = 0; found && pass < MOST_PASSES; pass++) {
            double next = speedFor(pack, walk.bestLift);
            if (walk.isExact && Math.abs(next - walk.speed) < SPEED_TOLERANCE * next) {
                return walk.onsetLift > 0 ? Optional.of(walk.result()) : Optional.empty();
            }
            if (!walk.again(next)) {
                walk = new SpeedStep(pack, next);
                found = walk.go();
            }
        }
        return Optional.empty();
    }

    /** Mean of the sections' largest lift coefficients at a speed. */
    private double sectionLift(double speed) {
        SpanGrid grid = trimmer.airframe().strips().grid();
        List<SectionCurve> curves = trimmer.curves(speed);
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += curves.get(i).maxLift() * grid.chord(i) * grid.width(i);
        }
        return sum / grid.area();
    }

    /** Speed at which a lift coefficient carries the model at one g, m/s. */
    private double speedFor(Pack pack, double lift) {
        return trimmer.airframe().balance(pack).stallSpeed(lift);
    }

    /** Walk at one speed. */
    private final class SpeedStep {
        private final Pack pack;
        private double speed;
        private double bestLift = Double.NEGATIVE_INFINITY;
        private Optional<Attitude> best = Optional.empty();
        private double onsetLift = Double.NaN;
        private double plateauLift = Double.NaN;
        private boolean elevatorLimited;
        private boolean isExact;
        private int firstStrip;
        private double reserve;

        SpeedStep(Pack pack, double speed) {
            this.pack = pack;
            this.speed = speed;
        }

        /** The whole walk in whole steps, its largest lift not yet looked for between them; false where it found no stall. */
        boolean go() {
            double alpha = start();
            StallStep first = new StallStep(trimmer.at(pack, speed, alpha));
            for (int k = 0; first.attitude().elevatorLimit() == ElevatorLimit.UP; k++) {
                if (k == MOST_STEPS || first.lift() <= 0) {
                    return false;
                }
                alpha -= STEP;
                first = new StallStep(trimmer.at(pack, speed, alpha));
            }
            AngleWalk<StallStep> walk = new AngleWalk<>();
            walk.add(first);
            take(first.attitude());
            for (int k = 1; k < MOST_STEPS; k++) {
                StallStep before = walk.last();
                alpha += stride(before);
                StallStep here = new StallStep(trimmer.at(pack, speed, alpha));
                if (before.isFree() && !here.isFree()) {
                    endAtStop(before.attitude(), here.attitude());
                    return best.isPresent();
                }
                walk.add(here);
                // Half stalled, or once lift has fallen, a wing may carry more again at a far higher drag: that is no
                // flying.
                if (best.isEmpty()
                        || (walk.risen() == walk.size() && here.reading().stalledShare() < 0.5)) {
                    take(here.attitude());
                }
                marks(walk);
                double highest = best.map(Attitude::alpha).orElse(alpha);
                if (!Double.isNaN(plateauLift) && !Double.isNaN(onsetLift) && alpha > highest + 1.5 * STEP) {
                    tops(walk);
                    return best.isPresent();
                }
            }
            return false;
        }

        /**
         * The same at another speed near by: only the neighbourhood of the stall is looked at again; onset and plateau
         * keep their distance from the largest lift.
         */
        boolean again(double newSpeed) {
            double formerLift = bestLift;
            boolean wasExact = isExact;
            double alpha = best.orElseThrow().alpha();
            speed = newSpeed;
            double wholeStepLift = formerLift;
            bestLift = Double.NEGATIVE_INFINITY;
            best = Optional.empty();
            if (elevatorLimited) {
                Attitude free = trimmer.at(pack, speed, alpha - 3 * STEP);
                Attitude beyond = trimmer.at(pack, speed, alpha + STEP);
                if (free.elevatorLimit() != ElevatorLimit.NONE || beyond.elevatorLimit() == ElevatorLimit.NONE) {
                    return false;
                }
                endAtStop(free, beyond);
            } else {
                double nearest = STEP * Math.rint(alpha / STEP);
                take(trimmer.at(pack, speed, nearest - STEP));
                take(trimmer.at(pack, speed, nearest));
                take(trimmer.at(pack, speed, nearest + STEP));
                wholeStepLift = bestLift;
                refine();
            }
            isExact = true;
            // What the walk missed between its steps moves neither mark.
            double moved = wasExact || elevatorLimited ? bestLift - formerLift : wholeStepLift - formerLift;
            onsetLift += moved;
            plateauLift += moved;
            return best.isPresent();
        }

        /**
         * An angle safely below the onset, because a strip's own angle rises more slowly than the body's; on whole
         * degrees, so that the walk does not depend on what was asked before.
         */
        private double start() {
            double margin = StallReading.of(trimmer.wing(speed, 0)).margin();
            double start = margin > 0 ? margin - HEAD_START : 2 * margin - HEAD_START;
            return STEP * Math.floor(start / STEP);
        }

        /**
         * Whole steps that leave more than one to where the first strip stalls, because a strip's angle rises no faster than
         * the body's; lift may have its top before a stretch of a chord has stalled.
         */
        private double stride(StallStep before) {
            boolean mayStride = before.isFree() && Double.isNaN(onsetLift);
            return mayStride ? STEP * Math.max(1, Math.floor(before.firstMargin() / STEP) - 1) : STEP;
        }

        private void take(Attitude attitude) {
            if (attitude.converged() && attitude.elevatorLimit() == ElevatorLimit.NONE && attitude.lift() > bestLift) {
                bestLift = attitude.lift();
                best = Optional.of(attitude);
            }
        }

        private void marks(AngleWalk<StallStep> walk) {
            if (Double.isNaN(onsetLift)) {
                walk.firstFall(StallStep::margin).ifPresent(place -> {
                    onsetLift = walk.value(place, StallStep::lift);
                    first(walk.last().attitude().wing());
                });
            }
            if (Double.isNaN(plateauLift)) {
                walk.firstFall(step -> 0.5 - step.reading().stalledShare())
                        .ifPresent(place -> plateauLift = walk.value(place, StallStep::hullLift));
            }
        }

        /** Where the wing lets go first. */
        private void first(LiftingLineSolution wing) {
            firstStrip = StallReading.of(wing).strip();
            reserve = reserve(wing);
        }

        /** Strip after strip stalls, so that lift may have several tops, some narrower than a step: each near the highest. */
        private void tops(AngleWalk<StallStep> walk) {
            double near = NEARLY_TOP * bestLift;
            for (int i = 1; i < Math.min(walk.risen(), walk.size() - 1); i++) {
                double lift = walk.get(i).lift();
                if (lift > near
                        && lift >= walk.get(i - 1).lift()
                        && lift >= walk.get(i + 1).lift()) {
                    take(trimmer.at(pack, speed, walk.get(i).alpha() - STEP / 2));
                    take(trimmer.at(pack, speed, walk.get(i).alpha() + STEP / 2));
                }
            }
        }

        /** Steps of a half, then of a quarter degree from the highest point, then the top of the parabola through it. */
        private void refine() {
            if (best.isEmpty()) {
                return;
            }
            for (double step = STEP / 2; step > STEP / 5; step /= 2) {
                Attitude middle = best.orElseThrow();
                Attitude left = trimmer.at(pack, speed, middle.alpha() - step);
                Attitude right = trimmer.at(pack, speed, middle.alpha() + step);
                take(left);
                take(right);
                double top = AngleWalk.Peak.of(left, middle, right).alpha();
                if (top != middle.alpha() && Math.abs(top - middle.alpha()) < step) {
                    take(trimmer.at(pack, speed, top));
                }
            }
        }

        /** The angle between two at which the moment vanishes with the elevator at its stop; held just below it. */
        private void endAtStop(Attitude free, Attitude stopped) {
            if (free.lift() < bestLift && !Double.isNaN(onsetLift)) {
                // The largest lift lies behind: where the travel ends says nothing more.
                takeStop(free);
                return;
            }
            double stop = stopped.elevator();
            WarmStartSecant root = new WarmStartSecant(NEAREST, stopped.alpha() - STEP / 2, USUAL_STABILITY);
            OptionalDouble end = root.solve(
                    alpha -> trimmer.heldAt(pack, speed, alpha, stop).moments().total(), free.alpha(), stopped.alpha());
            Attitude last = end.isEmpty() ? free : trimmer.at(pack, speed, end.getAsDouble() - 2 * NEAREST);
            takeStop(last.elevatorLimit() == ElevatorLimit.NONE ? last : free);
            isExact = elevatorLimited;
        }

        private void takeStop(Attitude attitude) {
            elevatorLimited = attitude.lift() >= bestLift;
            take(attitude);
            if (Double.isNaN(onsetLift)) {
                onsetLift = bestLift;
                first(attitude.wing());
            }
            if (Double.isNaN(plateauLift)) {
                plateauLift = bestLift;
            }
        }

        /** Angle left in front of the ailerons less the least angle left elsewhere. */
        private double reserve(LiftingLineSolution wing) {
            return StallReading.leastMargin(wing, this::isAtAileron)
                    - StallReading.leastMargin(wing, strip -> !isAtAileron(strip));
        }

        private boolean isAtAileron(int strip) {
            Optional<Surface> surface = trimmer.airframe().strips().surface(strip);
            return surface.isPresent() && ailerons.contains(surface.get().name());
        }

        private Stall result() {
            Attitude slowest = onFlatTop(best.orElseThrow());
            boolean limited = elevatorLimited && StallReading.of(slowest.wing()).margin() > 0 && stopCosts(slowest);
            double stall = speedFor(pack, slowest.lift());
            double onset = speedFor(pack, Math.min(onsetLift, slowest.lift()));
            double plateau = speedFor(pack, Math.max(plateauLift, slowest.lift()));
            return new Stall(stall, onset, plateau, limited, slowest, firstStrip, reserve);
        }

        /** The highest point; on a flat top where lift first comes near its most. */
        private Attitude onFlatTop(Attitude highest) {
            Deque<StallStep> below = new ArrayDeque<>(List.of(new StallStep(highest)));
            for (int k = 1; k < MOST_STEPS && below.getFirst().lift() > NEARLY_ALL * highest.lift(); k++) {
                StallStep next = new StallStep(trimmer.at(pack, speed, highest.alpha() - k * STEP));
                if (!next.converged()) {
                    return highest;
                }
                below.addFirst(next);
            }
            AngleWalk<StallStep> walk = new AngleWalk<>();
            below.forEach(walk::add);
            double alpha = walk.stall().alpha();
            return alpha < highest.alpha() - NEAREST ? trimmer.at(pack, speed, alpha) : highest;
        }

        /** True where the wing would carry so much more beyond the elevator's stop that the model would fly slower by 2 %. */
        private boolean stopCosts(Attitude slowest) {
            double here = StripForces.of(slowest.wing()).liftCoefficient();
            double most = here;
            boolean letsGo = false;
            for (int k = 1; k < MOST_STEPS; k++) {
                LiftingLineSolution wing = trimmer.wing(speed, slowest.alpha() + k * STEP);
                StallReading reading = StallReading.of(wing);
                if (!letsGo && reading.margin() <= 0) {
                    letsGo = true;
                    first(wing);
                }
                double lift = StripForces.of(wing).liftCoefficient();
                if (!wing.status().converged() || (reading.stalledShare() >= 0.5 && lift < most)) {
                    break;
                }
                most = Math.max(most, lift);
            }
            return most - here > (Math.pow(1 + COSTS, 2) - 1) * slowest.lift();
        }
    }
}
