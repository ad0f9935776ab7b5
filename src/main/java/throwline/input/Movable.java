package throwline.input;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A surface that set-ups and sticks can move, or the elevator.
 *
 * @param name as declared
 * @param chord behind the hinge at the surface's root end, m; empty where the file does not tell it rightly
 * @param travel as written; empty where not given
 */
record Movable(String name, OptionalDouble chord, Optional<WrittenDeflection.Both> travel) {

    /** The furthest that any linkage lets a surface go up, rad. */
    static final double MOST_UP = Math.toRadians(45);
    /** The furthest that any linkage lets a surface go down, rad. */
    static final double MOST_DOWN = Math.toRadians(90);

    /** The name that the elevator goes by in set-ups and sticks. */
    static final String ELEVATOR = "elevator";

    boolean isElevator() {
        return name.equals(ELEVATOR);
    }

    double mostDown() {
        return isElevator() ? MOST_UP : MOST_DOWN;
    }

    /** Signed angle, rad, trailing edge down positive; empty where it cannot be told. */
    OptionalDouble signed(WrittenDeflection deflection) {
        if (!deflection.isLength()) {
            return deflection.signed(1);
        }
        return chord.isPresent() ? deflection.signed(chord.getAsDouble()) : OptionalDouble.empty();
    }

    /** Size of a deflection, rad, not negative; empty where it cannot be told. */
    OptionalDouble size(WrittenDeflection deflection) {
        OptionalDouble signed = signed(deflection);
        return signed.isPresent() ? OptionalDouble.of(Math.abs(signed.getAsDouble())) : signed;
    }

    /** Stated travel up, rad. */
    OptionalDouble travelUp() {
        return travel.map(t -> size(t.up())).orElse(OptionalDouble.empty());
    }

    /** Stated travel down, rad. */
    OptionalDouble travelDown() {
        return travel.map(t -> size(t.down())).orElse(OptionalDouble.empty());
    }
}
