package throwline.power;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.model.Battery;
import throwline.model.Model;
import throwline.model.Motor;
import throwline.model.Pack;
import throwline.model.Propeller;

/**
 * A drive from its labels and one reading of a bench, the most trusted reading first: turns with amps give the motor's
 * resistance and the propeller's torque, pull with turns gives the chord of the blades, pull alone both together, watts or
 * turns alone the motor; without a reading the motor is taken to be as good as most (methods manual 20.6).
 */
public final class DriveFitting {

    /** Shaft power over electric power of motor and controller at full throttle (measured 0.77 and 0.83; 20.5). */
    private static final double USUAL_EFFICIENCY = 0.80;

    /** Current without load over that at full throttle, and its least, A (PRACTICE, methods manual 20.5). */
    private static final double NO_LOAD_SHARE = 0.025;

    private static final double LEAST_NO_LOAD = 0.4;

    /** Chords at three quarters of the radius over the radius that a bench is believed. */
    private static final double NARROWEST = 0.10;

    private static final double WIDEST = 0.36;
    private static final double LEAST_RESISTANCE = 0.002;
    private static final double TOLERANCE = 1e-7;
    private static final int MOST_EVALUATIONS = 200;

    private final Motor.Bench bench;
    private final OptionalDouble constant;
    private final OptionalDouble noLoad;
    private final Supply supply;
    private final double density;
    private final BladeElements label;

    private DriveFitting(Propeller propeller, Motor motor, Battery battery, double density) {
        bench = motor.bench();
        constant = motor.speedConstant().isPresent()
                ? OptionalDouble.of(
                        ElectricMotor.speedConstant(motor.speedConstant().getAsDouble()))
                : OptionalDouble.empty();
        noLoad = motor.noLoadCurrent();
        supply = Supply.of(battery.cells(), battery.capacity(), Supply.MIDDLE);
        this.density = density;
        label = new BladeElements(
                propeller.diameter(), propeller.pitch(), propeller.blades(), chordOf(propeller.kind()));
    }

    /**
     * The drive of a model with a pack.
     *
     * @param model the model
     * @param pack its battery
     * @param density of the air where it flies and where the bench stood, kg/m^3
     * @return empty where too little is known
     */
    public static Optional<FittedDrive> of(Model model, Pack pack, double density) {
        return model.isPowered(pack)
                ? Optional.of(of(
                        model.propeller().orElseThrow(),
                        model.motor().orElseThrow(),
                        pack.battery().orElseThrow(),
                        density))
                : Optional.empty();
    }

    /** The drive of a propeller, a motor of which speed constant or watts are known, and a battery. */
    static FittedDrive of(Propeller propeller, Motor motor, Battery battery, double density) {
        return new DriveFitting(propeller, motor, battery, density).fit();
    }

    /** Chord at three quarters of the radius over the radius, that gives the measured pull of a kind of propeller (COMPUTED, methods manual 20.3). */
    public static double chordOf(Propeller.Kind kind) {
        return switch (kind) {
            case SPORT -> 0.19;
            case THIN_ELECTRIC -> 0.215;
            case SLOW_FLY -> 0.22;
            case UNKNOWN -> BladeElements.USUAL_CHORD;
        };
    }

    private FittedDrive fit() {
        if (bench.turns().isPresent()) {
            double turns = bench.turns().getAsDouble();
            BladeElements blades =
                    bench.thrust().isPresent() ? withPull(turns, bench.thrust().getAsDouble()) : label;
            return atTurns(blades, turns);
        }
        if (bench.thrust().isPresent() && constant.isPresent()) {
            return withPullAlone(bench.thrust().getAsDouble());
        }
        if (bench.watts().isPresent()) {
            return withWatts(bench.watts().getAsDouble());
        }
        return asUsual(label, DriveBasis.LABEL);
    }

    /** The chord with which the propeller pulls so hard at these turns a second. */
    private BladeElements withPull(double turns, double thrust) {
        double wanted = thrust / (density * turns * turns * Math.pow(label.diameter(), 4));
        return label.chord(inside(c -> label.chord(c).at(0, turns).thrust() - wanted, NARROWEST, WIDEST));
    }

    private FittedDrive atTurns(BladeElements blades, double turns) {
        double expected = torque(blades, turns);
        OptionalDouble amps = amps();
        if (amps.isEmpty()) {
            DriveBasis basis = bench.thrust().isPresent() ? DriveBasis.BENCH : DriveBasis.TURNS;
            return turning(blades, turns, expected, basis);
        }
        double current = amps.getAsDouble();
        double volts = bench.voltage().orElse(supply.at(current));
        double idle = idle(current);
        double speed = constant.orElse(2 * Math.PI * turns / (USUAL_EFFICIENCY * volts * current / (current - idle)));
        double torque = (current - idle) / speed;
        double resistance = Math.max(LEAST_RESISTANCE, (volts - 2 * Math.PI * turns / speed) / current);
        return fitted(blades, torque / expected, new ElectricMotor(speed, resistance, idle), DriveBasis.BENCH);
    }

    /** Turns known, torque from the blades. */
    private FittedDrive turning(BladeElements blades, double turns, double torque, DriveBasis basis) {
        double omega = 2 * Math.PI * turns;
        double speed = constant.orElseThrow();
        double loaded = torque * speed;
        double idle = idle(loaded);
        double current = loaded + idle;
        double resistance = Math.max(LEAST_RESISTANCE, (supply.at(current) - omega / speed) / current);
        return fitted(blades, 1, new ElectricMotor(speed, resistance, idle), basis);
    }

    /** The chord with which a usual motor pulls so hard. */
    private FittedDrive withPullAlone(double thrust) {
        double chord = inside(
                c -> {
                    BladeElements blades = label.chord(c);
                    double turns = usualTurns(blades);
                    return blades.at(0, turns).thrust() * density * turns * turns * Math.pow(blades.diameter(), 4)
                            - thrust;
                },
                NARROWEST,
                WIDEST);
        return asUsual(label.chord(chord), DriveBasis.THRUST);
    }

    /** The motor that makes a usual shaft power of these watts; its label counts for less than they do. */
    private FittedDrive withWatts(double watts) {
        double turns = turnsFor(USUAL_EFFICIENCY * watts);
        double current = amps().orElseGet(() -> currentFor(watts));
        double volts = watts / current;
        double idle = idle(current);
        double speed = 2 * Math.PI * turns * (current - idle) / (USUAL_EFFICIENCY * watts);
        double resistance = Math.max(LEAST_RESISTANCE, (volts - 2 * Math.PI * turns / speed) / current);
        return fitted(label, 1, new ElectricMotor(speed, resistance, idle), DriveBasis.WATTS);
    }

    /** Amps read, or watts over volts. */
    private OptionalDouble amps() {
        if (bench.current().isPresent()) {
            return bench.current();
        }
        return bench.power().isPresent()
                ? OptionalDouble.of(
                        bench.voltage().isPresent()
                                ? bench.power().getAsDouble() / bench.voltage().getAsDouble()
                                : currentFor(bench.power().getAsDouble()))
                : OptionalDouble.empty();
    }

    /** Amps with which the battery gives these watts. */
    private double currentFor(double watts) {
        double root = supply.voltage() * supply.voltage() - 4 * supply.resistance() * watts;
        return (supply.voltage() - Math.sqrt(Math.max(0, root))) / (2 * supply.resistance());
    }

    /** Turns a second at which the propeller takes a shaft power, W. */
    private double turnsFor(double shaft) {
        return inside(n -> torque(label, n) * 2 * Math.PI * n - shaft, 5, 1000);
    }

    /** A motor of the usual efficiency at full throttle. */
    private FittedDrive asUsual(BladeElements blades, DriveBasis basis) {
        double turns = usualTurns(blades);
        return turning(blades, turns, torque(blades, turns), basis);
    }

    /** Turns a second at which shaft power over electric power is the usual; they rise with the battery's voltage. */
    private double usualTurns(BladeElements blades) {
        double speed = constant.orElseThrow();
        UnivariateFunction more = n -> {
            double loaded = torque(blades, n) * speed;
            double current = loaded + idle(loaded);
            return 2 * Math.PI * n / speed * loaded - USUAL_EFFICIENCY * current * supply.at(current);
        };
        return inside(more, 1, supply.voltage() * speed / (2 * Math.PI));
    }

    private double idle(double current) {
        return noLoad.orElse(Math.max(LEAST_NO_LOAD, NO_LOAD_SHARE * current));
    }

    private double torque(BladeElements blades, double turns) {
        return blades.at(0, turns).power() * density * turns * turns * Math.pow(blades.diameter(), 5) / (2 * Math.PI);
    }

    private FittedDrive fitted(BladeElements blades, double factor, ElectricMotor motor, DriveBasis basis) {
        Drive drive = new Drive(blades, new PropellerChart(blades).torque(factor), motor, supply);
        return new FittedDrive(drive, basis, factor, drive.at(0, 1, density).motorEfficiency());
    }

    /** Root of a rising function between two ends; the nearer end where there is none. */
    private static double inside(UnivariateFunction rising, double low, double high) {
        if (rising.value(low) >= 0) {
            return low;
        }
        return rising.value(high) <= 0
                ? high
                : new BracketingNthOrderBrentSolver(TOLERANCE, 5).solve(MOST_EVALUATIONS, rising, low, high);
    }
}
