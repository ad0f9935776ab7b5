package throwline.input;

import java.util.OptionalDouble;

/**
 * Deflection of a surface as written.
 *
 * @param size not negative: radians, or metres of straight distance at the trailing edge
 * @param isLength true for metres
 * @param sense direction
 */
record WrittenDeflection(double size, boolean isLength, Sense sense) {

    /** Which way the trailing edge goes. */
    enum Sense {
        UP,
        DOWN,
        /** No word and no sign. */
        UNSAID
    }

    /**
     * The angle.
     *
     * @param chord behind the hinge at the surface's root end, m
     * @return rad, not negative; empty where the trailing edge cannot go so far
     */
    OptionalDouble angle(double chord) {
        double half = size / (2 * chord);
        return !isLength
                ? OptionalDouble.of(size)
                : half > 1 ? OptionalDouble.empty() : OptionalDouble.of(2 * Math.asin(half));
    }

    /** The angle with its sign, rad, trailing edge down positive; one without a word counts as down. */
    OptionalDouble signed(double chord) {
        OptionalDouble angle = angle(chord);
        return angle.isPresent() && sense == Sense.UP && size > 0 ? OptionalDouble.of(-angle.getAsDouble()) : angle;
    }

    /**
     * Travel, or the throws of a roll stick.
     *
     * @param up how far up, its sense unsaid
     * @param down how far down, its sense unsaid
     */
    record Both(WrittenDeflection up, WrittenDeflection down) {}
}
