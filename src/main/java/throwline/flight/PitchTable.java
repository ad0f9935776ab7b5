package throwline.flight;

import java.util.function.ToDoubleFunction;
import throwline.flight.Trimmer.TailPower;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.numerics.Interpolation;

/**
 * Coefficients in pitch at four shares of the way between two set-ups and at angles two degrees apart, solved with the
 * whole model at one speed; linear between. Elevator, pitch rate and the time that the wing's downwash needs to the tail
 * enter by the tail's slopes at every point; the wing's own part in the damping by one slope a share.
 */
final class PitchTable implements PitchCoefficients {

    private static final int SHARES = 4;
    private static final double STEP = Math.toRadians(2);

    /** Pitch rate over speed at which its effect is taken, rad/m: a path of 50 m radius. */
    private static final double PITCH_STEP = 0.02;

    private final double lowest;
    private final double zero;
    private final Cell[][] cells;

    private record Cell(
            double lift,
            double drag,
            double moment,
            double liftByElevator,
            double momentByElevator,
            double liftByPitch,
            double momentByPitch,
            double momentByTurning) {}

    /**
     * Solves the table.
     *
     * @param move from one set-up to another
     * @param pack with this battery
     * @param speed m/s
     * @param elevator about this deflection, rad
     * @param lowest lowest angle of attack, rad
     * @param highest highest angle of attack, rad
     */
    PitchTable(Move move, Pack pack, double speed, double elevator, double lowest, double highest) {
        this.lowest = lowest;
        zero = elevator;
        int angles = 2 + (int) Math.ceil((highest - lowest) / STEP);
        cells = new Cell[SHARES][angles];
        for (int s = 0; s < SHARES; s++) {
            Trimmer trimmer = move.at((double) s / (SHARES - 1));
            Attitude[] base = new Attitude[angles];
            for (int k = 0; k < angles; k++) {
                base[k] = trimmer.heldAt(pack, speed, lowest + k * STEP, elevator);
            }
            Damping damping = damping(trimmer, pack, base[angles / 2]);
            for (int k = 0; k < angles; k++) {
                double downwash = k + 1 < angles
                        ? (base[k + 1].downwash() - base[k].downwash()) / STEP
                        : (base[k].downwash() - base[k - 1].downwash()) / STEP;
                cells[s][k] = cell(trimmer, pack, base[k], downwash, damping);
            }
        }
    }

    /** The model on its way from one set-up to another. */
    interface Move {
        /** The model with its surfaces this share of the way. */
        Trimmer at(double share);
    }

    /** Share of the wing in the change of lift and moment by pitch rate over speed, besides the tail. */
    private record Damping(double lift, double moment) {}

    private static Damping damping(Trimmer trimmer, Pack pack, Attitude base) {
        Attitude pitching = trimmer.heldAt(pack, base.speed(), base.alpha(), base.elevator(), PITCH_STEP);
        Tail tail = new Tail(trimmer, pack, base);
        return new Damping(
                (pitching.lift() - base.lift()) / PITCH_STEP - tail.liftByPitch(),
                (pitching.moments().total() - base.moments().total()) / PITCH_STEP - tail.momentByPitch());
    }

    private static Cell cell(Trimmer trimmer, Pack pack, Attitude base, double downwashSlope, Damping damping) {
        Tail tail = new Tail(trimmer, pack, base);
        return new Cell(
                base.lift(),
                base.drag(),
                base.moments().total(),
                tail.lift(tail.power.byElevator()),
                tail.power.byElevator(),
                tail.liftByPitch() + damping.lift,
                tail.momentByPitch() + damping.moment,
                tail.power.byAngle() * downwashSlope * tail.fromWing);
    }

    /** The tail's slopes at an attitude. */
    private static final class Tail {
        private final TailPower power;
        private final double fromBalance;
        private final double fromWing;
        private final double turned;
        private final double chord;

        Tail(Trimmer trimmer, Pack pack, Attitude base) {
            Model model = trimmer.airframe().model();
            power = trimmer.tailPower(pack, base);
            fromBalance = model.tail().arm() + model.tail().chord() / 4 - pack.balance();
            fromWing = model.tail().arm() + (model.tail().chord() - model.wing().chordAt(0)) / 4;
            turned = fromBalance + model.tail().chord() / 2;
            chord = model.wing().meanAerodynamicChord();
        }

        /** Lift of the whole model that goes with a moment by the tail. */
        double lift(double moment) {
            return -moment * chord / fromBalance;
        }

        double momentByPitch() {
            return power.byAngle() * turned;
        }

        double liftByPitch() {
            return lift(momentByPitch());
        }
    }

    @Override
    public double lift(double share, double alpha, double elevator, double pitch) {
        return between(share, alpha, c -> c.lift + c.liftByElevator * (elevator - zero) + c.liftByPitch * pitch);
    }

    @Override
    public double drag(double share, double alpha) {
        return between(share, alpha, c -> c.drag);
    }

    @Override
    public double moment(double share, double alpha, double elevator, double pitch, double turning) {
        return between(
                share,
                alpha,
                c -> c.moment
                        + c.momentByElevator * (elevator - zero)
                        + c.momentByPitch * pitch
                        + c.momentByTurning * turning);
    }

    private double between(double share, double alpha, ToDoubleFunction<Cell> value) {
        double s = Interpolation.clamp(share, 0, 1) * (SHARES - 1);
        int i = (int) Math.min(SHARES - 2.0, Math.floor(s));
        double a = (alpha - lowest) / STEP;
        int k = (int) Interpolation.clamp(Math.floor(a), 0, cells[0].length - 2.0);
        return Interpolation.between(along(cells[i], k, a - k, value), along(cells[i + 1], k, a - k, value), s - i);
    }

    private static double along(Cell[] row, int k, double share, ToDoubleFunction<Cell> value) {
        return Interpolation.between(value.applyAsDouble(row[k]), value.applyAsDouble(row[k + 1]), share);
    }
}
