package throwline.window.session;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.numerics.Interpolation;

/**
 * A surface that a hand can move, and how far it goes.
 *
 * @param name its name
 * @param chord behind the hinge where its throw is measured, m
 * @param hinge place of the hinge over the section's chord
 * @param up travel up, rad, not negative
 * @param down travel down, rad, not negative
 */
public record Movable(String name, double chord, double hinge, double up, double down) {

    /** Slack at a stop, rad. */
    private static final double STOP = 1e-9;

    /** Surfaces of the wing from the root out, then the elevator, which a set-up may mix in. */
    public static List<Movable> of(Model model) {
        List<Movable> all = new ArrayList<>();
        model.wing()
                .surfaces()
                .forEach(s -> all.add(new Movable(
                        s.name(), model.wing().throwChord(s), 1 - s.chordFraction(), s.travelUp(), s.travelDown())));
        var elevator = model.tail().elevator();
        all.add(new Movable(
                Servo.ELEVATOR,
                model.tail().throwChord(),
                1 - elevator.throwFraction(),
                elevator.travelUp(),
                elevator.travelDown()));
        return all;
    }

    /** The one of this name, which the model has. */
    static Movable of(Model model, String name) {
        return of(model).stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** An angle as far as the travel lets it go, rad, trailing edge down positive. */
    public double stopped(double angle) {
        return Interpolation.clamp(angle, -up, down);
    }

    /** True where an angle is at a stop that is not neutral. */
    public boolean isAtStop(double angle) {
        return (angle >= down - STOP && down > 0) || (angle <= -up + STOP && up > 0);
    }

    /** Where a set-up has it, rad, trailing edge down positive. */
    public double in(SetUp setUp) {
        return stopped(name.equals(Servo.ELEVATOR) ? setUp.elevator() : setUp.deflection(name));
    }

    /** A set-up with it somewhere else. */
    public SetUp moved(SetUp setUp, double angle) {
        if (name.equals(Servo.ELEVATOR)) {
            return new SetUp(setUp.name(), setUp.deflections(), angle, setUp.switchPosition());
        }
        var deflections = new java.util.LinkedHashMap<>(setUp.deflections());
        deflections.put(name, angle);
        return new SetUp(setUp.name(), deflections, setUp.elevator(), setUp.switchPosition());
    }
}
