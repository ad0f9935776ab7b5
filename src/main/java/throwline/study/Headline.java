package throwline.study;

/** A number that a person reads first, with its band; or the reason why there is none. */
public sealed interface Headline permits Headline.Known, Headline.Unknown {

    /** What the band of a number rests on. */
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
     */
    record Known(double value, double low, double high, Basis basis) implements Headline {
        public Known {
            if (!(low <= value && value <= high)) {
                throw new IllegalArgumentException("band " + low + " to " + high + " does not hold " + value);
            }
        }
    }

    /**
     * No number.
     *
     * @param why key of the sentence that says why
     */
    record Unknown(String why) implements Headline {}
}
