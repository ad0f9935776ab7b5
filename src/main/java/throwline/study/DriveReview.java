package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.air.Air;
import throwline.air.Gravity;
import throwline.model.Battery;
import throwline.model.Model;
import throwline.model.Motor;
import throwline.model.Pack;
import throwline.model.Propeller;
import throwline.power.DriveFitting;
import throwline.power.FittedDrive;
import throwline.power.OperatingPoint;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Loads of motor and battery held against what such things bear: kv, cells and diameter that do not fit each other. */
final class DriveReview {

    /** Current over what the battery holds in an hour that batteries of these models do not give (PRACTICE). */
    private static final double MOST_RATE = 60;

    /** Current at full throttle over that without load that no motor is made for (PRACTICE: 20 to 60). */
    private static final double MOST_LOAD = 150;

    /** Fastest blade tips, m/s (PRACTICE: 0.7 of the speed of sound). */
    private static final double FASTEST_TIPS = 240;

    /** Pull over weight with which nothing takes off (PRACTICE). */
    private static final double LEAST_PULL = 0.12;

    private static final double HOUR = 3600;
    private static final double MINUTE = 60;

    private DriveReview() {}

    /** A word where a propeller is driven by a motor of which too little is known. */
    static List<Message> unknown(Model model, Pack pack) {
        boolean unknown = model.propeller().isPresent() && !model.isPowered(pack);
        return unknown ? List.of(Message.of("note.no-motor")) : List.of();
    }

    /** What is unusual with the batteries of these packs at full throttle, standing still; each once. */
    static List<Message> of(Model model, List<Pack> packs) {
        double density = Air.at(model.field().heightAboveSea(), model.field().temperature())
                .density();
        return of(model, packs, density, pack -> DriveFitting.of(model, pack, density));
    }

    /** The same where the drives are known already. */
    static List<Message> of(
            Model model, List<Pack> packs, double density, Function<Pack, Optional<FittedDrive>> drives) {
        for (Pack pack : packs) {
            List<Message> notes = drives.apply(pack)
                    .map(drive -> of(model, pack, drive.drive().at(0, 1, density)))
                    .orElse(List.of());
            if (!notes.isEmpty()) {
                return notes;
            }
        }
        return List.of();
    }

    private static List<Message> of(Model model, Pack pack, OperatingPoint full) {
        Propeller propeller = model.propeller().orElseThrow();
        Motor motor = model.motor().orElseThrow();
        Battery battery = pack.battery().orElseThrow();
        List<Message> notes = new ArrayList<>();
        Quantity diameter = new Quantity(propeller.diameter(), Dimension.LENGTH);
        Quantity current = new Quantity(Math.rint(full.current()), Dimension.CURRENT);
        if (full.current() * HOUR > MOST_RATE * battery.capacity()) {
            notes.add(Message.of(
                    "note.unusual.load",
                    current,
                    new Quantity(battery.capacity(), Dimension.CHARGE),
                    diameter,
                    number(battery.cells())));
        } else if (full.current() > MOST_LOAD * motor.noLoadCurrent().orElse(full.current())) {
            notes.add(Message.of(
                    "note.unusual.motor-load",
                    current,
                    new Quantity(motor.noLoadCurrent().getAsDouble(), Dimension.CURRENT),
                    diameter,
                    number(battery.cells())));
        }
        double tips = Math.PI * propeller.diameter() * full.turns();
        if (tips > FASTEST_TIPS) {
            notes.add(Message.of(
                    "note.unusual.tips",
                    number(100 * Math.rint(MINUTE * full.turns() / 100)),
                    diameter,
                    number(Math.rint(tips))));
        }
        double pull = full.thrust() / Gravity.STANDARD;
        if (pull < LEAST_PULL * pack.mass()) {
            notes.add(Message.of(
                    "note.unusual.pull",
                    new Quantity(Math.rint(100 * pull) / 100, Dimension.MASS),
                    new Quantity(pack.mass(), Dimension.MASS),
                    diameter,
                    number(battery.cells())));
        }
        return notes;
    }

    private static Quantity number(double value) {
        return new Quantity(value, Dimension.NUMBER);
    }
}
