package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.flight.StartingMix;

/** A number that a person reads first, with its band; or the reason why there is none. */
public sealed interface Headline permits Headline.Known, Headline.Unknown {

    /** The number; empty where there is none. */
    default Optional<Known> known() {
        return this instanceof Known known ? Optional.of(known) : Optional.empty();
    }

    /** Foundations of a band. */
    enum Basis {
        /** Statistics of measured cases. */
        MEASURED,
        /** The stated accuracy of a published method. */
        METHOD,
        /** Common practice, no source. */
        ASSUMED,
        /** Flights of this very model. */
        FLOWN
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
     * @param learnt what it was before flights of the model put it right; empty where none did
     */
    record Known(double value, double low, double high, Basis basis, double shared, Optional<FromFlights> learnt)
            implements Headline {

        /** A number that no flight put right. */
        public Known(double value, double low, double high, Basis basis, double shared) {
            this(value, low, high, basis, shared, Optional.empty());
        }

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
            return new Known(
                    factor * value,
                    factor * low,
                    factor * high,
                    basis,
                    shared,
                    learnt.map(before -> before.times(factor)));
        }

        /** True where a change may go either way: its band holds zero. */
        public boolean mayGoEitherWay() {
            return low <= 0 && high >= 0;
        }

        /** The elevator mix to start with for this change; empty where it may go either way. */
        public Optional<Double> startingMix() {
            return mayGoEitherWay() ? Optional.empty() : Optional.of(StartingMix.of(value));
        }

        /** This number with a band that ends here at the latest: nothing comes down more steeply than straight. */
        public Known atMost(double most) {
            return new Known(value, low, Math.min(most, high), basis, shared, learnt);
        }

        /** This number with a band wider by a factor, at least 1. */
        public Known wider(double factor) {
            return new Known(
                    value, value - factor * (value - low), value + factor * (high - value), basis, shared, learnt);
        }

        /**
         * Whether the difference to another number may be nothing or of the other sign, nine times out of ten. Errors that
         * both share cancel as far as their bands are alike; the rest adds by squares, as errors do that know nothing of each
         * other.
         */
        public boolean tooCloseTo(Known other) {
            if (learnt.isPresent() && other.learnt.isPresent()) {
                return Math.abs(value - other.value) <= learnt.get().halfWidthOfDifference(other.learnt.get());
            }
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
     * What a number was before flights put it right, and how its error goes with those of other numbers.
     *
     * @param value before, in SI units
     * @param low before
     * @param high before
     * @param flown true where its own set-up was flown; false where it follows from flights of others
     * @param errors standard deviations along directions that all numbers of a model share, in SI units
     * @param own standard deviation that no other number shares
     */
    record FromFlights(double value, double low, double high, boolean flown, List<Double> errors, double own) {

        /** Nine of ten normal errors lie inside so many standard deviations. */
        private static final double NINE_OF_TEN = 1.6449;

        public FromFlights {
            errors = List.copyOf(errors);
        }

        FromFlights times(double factor) {
            return new FromFlights(
                    factor * value,
                    factor * low,
                    factor * high,
                    flown,
                    errors.stream().map(error -> factor * error).toList(),
                    factor * own);
        }

        /** Half-width of the band of a difference. */
        double halfWidthOfDifference(FromFlights other) {
            double sum = own * own + other.own * other.own;
            for (int i = 0; i < errors.size(); i++) {
                sum += Math.pow(errors.get(i) - other.errors.get(i), 2);
            }
            return NINE_OF_TEN * Math.sqrt(sum);
        }
    }

    /** True where there is no number, for this reason. */
    default boolean isUnknownFor(String why) {
        return this instanceof Unknown unknown && unknown.why().equals(why);
    }

    /**
     * No number.
     *
     * @param why key of the sentence that says why
     */
    record Unknown(String why) implements Headline {}
}
