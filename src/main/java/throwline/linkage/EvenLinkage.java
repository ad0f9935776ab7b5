package throwline.linkage;

import java.util.OptionalDouble;

/**
 * Stand-in for a linkage that is not known: the surface turns in proportion to the servo, everywhere.
 *
 * @param ratio angle of the surface over angle of the servo, positive
 */
public record EvenLinkage(double ratio) implements Linkage {

    public EvenLinkage {
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("a ratio above zero, not " + ratio);
        }
    }

    @Override
    public OptionalDouble surfaceAt(double servo) {
        return OptionalDouble.of(ratio * servo);
    }

    @Override
    public OptionalDouble servoAt(double surface) {
        return OptionalDouble.of(surface / ratio);
    }

    @Override
    public OptionalDouble ratioAt(double servo) {
        return OptionalDouble.of(ratio);
    }

    @Override
    public AngleRange surface() {
        return new AngleRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
}
