package throwline.input;

import java.util.Optional;
import java.util.OptionalDouble;

/** Range in which the set-ups and sticks of a file together move one surface. */
final class Programmed {

    private final Movable movable;
    private double up;
    private double down;

    Programmed(Branch root, Movable movable) {
        this.movable = movable;
        double setUpUp = 0;
        double setUpDown = 0;
        for (Branch setUp : root.child("set-ups").children()) {
            double angle = signed(setUp.child(movable.name()));
            setUpUp = Math.max(setUpUp, -angle);
            setUpDown = Math.max(setUpDown, angle);
        }
        up = setUpUp;
        down = setUpDown;
        for (Branch stick : root.child("sticks").children()) {
            Branch where = stick.child(movable.name());
            Optional<WrittenDeflection.Both> both =
                    stick.text("does").equals("roll") ? Movables.both(where) : Optional.empty();
            double angle = both.isPresent() ? 0 : signed(where);
            double stickUp = both.map(b -> size(b.up())).orElse(Math.max(0, -angle));
            double stickDown = both.map(b -> size(b.down())).orElse(Math.max(0, angle));
            up = Math.max(up, setUpUp + stickUp);
            down = Math.max(down, setUpDown + stickDown);
        }
    }

    /** The furthest up, rad, not negative. */
    double up() {
        return up;
    }

    /** The furthest down, rad, not negative. */
    double down() {
        return down;
    }

    private double signed(Branch where) {
        OptionalDouble angle =
                where.value(WrittenDeflection.class).map(movable::signed).orElse(OptionalDouble.empty());
        return angle.orElse(0);
    }

    private double size(WrittenDeflection deflection) {
        return movable.size(deflection).orElse(0);
    }
}
