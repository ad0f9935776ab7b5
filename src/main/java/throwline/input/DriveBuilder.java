package throwline.input;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.air.Gravity;
import throwline.model.Battery;
import throwline.model.Motor;
import throwline.model.Pack;
import throwline.model.Propeller;
import throwline.units.Dimension;

/** Builds propeller, motor and batteries. */
final class DriveBuilder {

    /* Common practice, no source. */
    private static final double PITCH_OF_DIAMETER = 0.6;
    /** A s of a battery for each kg of model: 4 Ah for 3 kg. Common practice, no source. */
    private static final double CAPACITY_OF_MASS = 4.0 * 3600 / 3;

    private static final double MINUTE = 60;

    private final Branch root;
    private final Assumed assumed;

    DriveBuilder(Branch root, Assumed assumed) {
        this.root = root;
        this.assumed = assumed;
    }

    Pack pack(Branch pack) {
        double mass = pack.amount("weight");
        OptionalDouble cells = pack.child("cells").amount();
        OptionalDouble capacity = pack.child("capacity").amount();
        Optional<Battery> battery = cells.isEmpty()
                ? Optional.empty()
                : Optional.of(new Battery(
                        (int) cells.getAsDouble(),
                        capacity.orElseGet(
                                () -> assumed.amount(pack, "capacity", Dimension.CHARGE, CAPACITY_OF_MASS * mass))));
        return new Pack(pack.name(), mass, pack.amount("balance"), battery);
    }

    Optional<Propeller> propeller() {
        Branch propeller = root.child("propeller");
        if (propeller.isAbsent()) {
            return Optional.empty();
        }
        double diameter = propeller.amount("diameter");
        return Optional.of(new Propeller(
                diameter,
                assumed.length(propeller, "pitch", PITCH_OF_DIAMETER * diameter),
                (int) propeller.amount("blades"),
                Propeller.Shut.valueOf(propeller.text("throttle shut").toUpperCase(Locale.ROOT)),
                propeller.amount("height"),
                propeller.has("kind")
                        ? Propeller.Kind.valueOf(
                                propeller.text("kind").toUpperCase(Locale.ROOT).replace(' ', '_'))
                        : Propeller.Kind.UNKNOWN,
                propeller.child("down thrust").amount().orElse(0)));
    }

    Optional<Motor> motor() {
        Branch motor = root.child("motor");
        Branch bench = root.child("bench");
        if (motor.isAbsent() && bench.isAbsent()) {
            return Optional.empty();
        }
        return Optional.of(new Motor(
                motor.child("kv").amount(),
                motor.child("no-load current").amount(),
                motor.isAbsent() ? Motor.USUAL_CRUISE : motor.amount("cruise"),
                new Motor.Bench(
                        times(bench.child("rpm").amount(), 1 / MINUTE),
                        bench.child("voltage").amount(),
                        bench.child("current").amount(),
                        bench.child("power").amount(),
                        times(bench.child("thrust").amount(), Gravity.STANDARD))));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }
}
