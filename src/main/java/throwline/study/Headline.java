package throwline.study;

import java.util.Optional;
import throwline.flight.StartingMix;

/** A number that a person reads first, with its band; or the reason why there is none. */
public sealed interface Headline permits Headline.Known, Headline.Unknown {

    /** Foundations of a band. */
    enum Basis {
        /** Statistics of measured cases. */
        MEASURED,
        /** The stated accuracy of a published method. */
        METHOD,
        /** Common practice, no source. */
        ASSUMED
    }

    /**
     * A number and the band that it is meant to lie in nine times out of ten.
     *
     * @param value in SI units
     * @param low lower end of the band
     * @param high upper end of the band
     * @param basis what the band rests on
     * @param shared share of the band's half-width that set-ups of one model have in common, 0 to 1: what makes one of them
     *     too large makes the other too large as well, in proportion to its band
     */
    record Known(double value, double low, double high, Basis basis, double shared) implements Headline {

        /** A number that has no error in common with others. */
        public Known(double value, double low, double high, Basis basis) {
            this(value, low, high, basis, 0);
        }

        public Known {
            if (!(low <= value && value <= high)) {
                throw new IllegalArgumentException("band " + low + " to " + high + " does not hold " + value);
            }
        }

        /** This number and its band times a positive factor. */
        public Known times(double factor) {
            return new Known(factor * value, factor * low, factor * high, basis, shared);
        }

        /** True where a change may go either way: its band holds zero. */
        public boolean mayGoEitherWay() {
            return low <= 0 && high >= 0;
        }

        /** The elevator mix to start with for this change; empty where it may go either way. */
        public Optional<Double> startingMix() {
            return mayGoEitherWay() ? Optional.empty() : Optional.of(StartingMix.of(value));
        }

        /** This number with a band wider by a factor, at least 1. */
        public Known wider(double factor) {
            return new Known(value, value - factor * (value - low), value + factor * (high - value), basis, shared);
        }

        /**
         * Whether the difference to another number may be nothing or of the other sign, nine times out of ten. Errors that
         * both share cancel as far as their bands are alike; the rest adds by squares, as errors do that know nothing of each
         * other.
         */
        public boolean tooCloseTo(Known other) {
            Known less = value <= other.value ? this : other;
            Known more = value <= other.value ? other : this;
            double up = less.high - less.value;
            double down = more.value - more.low;
            double common = Math.min(shared, other.shared);
            double cancelled = common * (up - down);
            double own = (1 - common * common) * (up * up + down * down);
            return more.value - less.value <= Math.sqrt(cancelled * cancelled + own);
        }
    }

    /**
     * No number.
     *
     * @param why key of the sentence that says why
     */
    record Unknown(String why) implements Headline {}
}
