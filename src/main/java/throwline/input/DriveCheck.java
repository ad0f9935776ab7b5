package throwline.input;

import java.util.OptionalDouble;
import throwline.air.Air;
import throwline.air.Gravity;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;

/** Relations between propeller, motor, batteries and bench of which one number must be wrong. */
final class DriveCheck {

    /** Pitch over diameter that no blade has. Common practice, no source. */
    static final double MOST_PITCH = 2;

    /** Amps over the capacity in Ah that no battery gives for long. Common practice, no source. */
    private static final double MOST_RATE = 100;
    /** Watts against volts times amps: more than meters differ. Common practice, no source. */
    private static final double METERS = 0.1;
    /* Volts of a lithium-polymer cell, full of the high-voltage kind and empty under load. Common practice, no source. */
    private static final double MOST_VOLTS = 4.4;
    private static final double LEAST_VOLTS = 2.5;

    private final Branch root;
    private final Problems problems;

    DriveCheck(Branch root, Problems problems) {
        this.root = root;
        this.problems = problems;
    }

    void check() {
        pitch();
        kv();
        voltage();
        current();
        watts();
        thrust();
    }

    private void pitch() {
        Branch pitch = root.child("propeller").child("pitch");
        OptionalDouble diameter = root.child("propeller").child("diameter").amount();
        if (pitch.amount().isPresent()
                && diameter.isPresent()
                && pitch.amount().getAsDouble() > MOST_PITCH * diameter.getAsDouble()) {
            problems.add(
                    pitch,
                    "input.propeller.pitch",
                    QuantityPrinter.print(pitch.amount().getAsDouble(), Unit.MILLIMETRE),
                    QuantityPrinter.print(diameter.getAsDouble(), Unit.MILLIMETRE));
        }
    }

    private OptionalDouble bench(String key) {
        return root.child("bench").child(key).amount();
    }

    /** A motor under load turns more slowly than kv times volts. */
    private void kv() {
        OptionalDouble kv = root.child("motor").child("kv").amount();
        OptionalDouble rpm = bench("rpm");
        OptionalDouble volts = bench("voltage").isPresent() ? bench("voltage") : mostCells();
        if (kv.isPresent() && rpm.isPresent() && volts.isPresent()) {
            double most = kv.getAsDouble() * volts.getAsDouble();
            if (rpm.getAsDouble() >= most) {
                problems.add(
                        root.child("motor").child("kv"),
                        "input.motor.kv",
                        number(rpm.getAsDouble()),
                        number(kv.getAsDouble()),
                        number(most),
                        QuantityPrinter.print(volts.getAsDouble(), Unit.VOLT));
            }
        }
    }

    /** Full volts of the pack with the most cells. */
    private OptionalDouble mostCells() {
        return root.child("packs").children().stream()
                .flatMapToDouble(pack -> pack.child("cells").amount().stream())
                .map(cells -> cells * MOST_VOLTS)
                .max();
    }

    private void voltage() {
        OptionalDouble volts = bench("voltage");
        double[] cells = root.child("packs").children().stream()
                .flatMapToDouble(pack -> pack.child("cells").amount().stream())
                .toArray();
        if (volts.isEmpty() || cells.length == 0) {
            return;
        }
        for (double count : cells) {
            double each = volts.getAsDouble() / count;
            if (each >= LEAST_VOLTS && each <= MOST_VOLTS) {
                return;
            }
        }
        problems.add(
                root.child("bench").child("voltage"),
                "input.bench.voltage",
                QuantityPrinter.print(volts.getAsDouble(), Unit.VOLT),
                number(cells[0]));
    }

    private void current() {
        OptionalDouble amps = bench("current");
        OptionalDouble capacity = root.child("packs").children().stream()
                .flatMapToDouble(pack -> pack.child("capacity").amount().stream())
                .max();
        if (amps.isPresent()
                && capacity.isPresent()
                && amps.getAsDouble() > MOST_RATE * Unit.AMPERE_HOUR.fromSi(capacity.getAsDouble())) {
            problems.add(
                    root.child("bench").child("current"),
                    "input.bench.current",
                    QuantityPrinter.print(amps.getAsDouble(), Unit.AMPERE),
                    QuantityPrinter.print(capacity.getAsDouble(), Unit.MILLIAMPERE_HOUR));
        }
    }

    private void watts() {
        if (bench("power").isPresent()
                && bench("voltage").isPresent()
                && bench("current").isPresent()) {
            double read = bench("power").getAsDouble();
            double product = bench("voltage").getAsDouble() * bench("current").getAsDouble();
            if (Math.abs(read - product) > METERS * product) {
                problems.add(
                        root.child("bench").child("power"),
                        "input.bench.power",
                        QuantityPrinter.print(read, Unit.WATT),
                        QuantityPrinter.print(product, Unit.WATT));
            }
        }
    }

    /** No propeller pulls harder standing still than a disc without losses (momentum theory). */
    private void thrust() {
        OptionalDouble diameter = root.child("propeller").child("diameter").amount();
        OptionalDouble power = bench("power");
        if (power.isEmpty() && bench("voltage").isPresent() && bench("current").isPresent()) {
            power = OptionalDouble.of(
                    bench("voltage").getAsDouble() * bench("current").getAsDouble());
        }
        OptionalDouble pull = bench("thrust");
        if (diameter.isPresent() && power.isPresent() && pull.isPresent()) {
            double area = Math.PI * diameter.getAsDouble() * diameter.getAsDouble() / 4;
            double thrust = pull.getAsDouble() * Gravity.STANDARD;
            double needed = Math.pow(thrust, 1.5) / Math.sqrt(2 * Air.SEA_DENSITY * area);
            if (needed > power.getAsDouble()) {
                problems.add(
                        root.child("bench").child("thrust"),
                        "input.bench.thrust",
                        QuantityPrinter.print(pull.getAsDouble(), Unit.KILOGRAM),
                        QuantityPrinter.print(needed, Unit.WATT),
                        QuantityPrinter.print(power.getAsDouble(), Unit.WATT));
            }
        }
    }

    private static String number(double value) {
        return QuantityPrinter.number(value, 0);
    }
}
