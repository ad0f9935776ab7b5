package throwline.study;

import java.util.Optional;
import throwline.units.Dimension;
import throwline.units.Measure;

/**
 * A wing surface that moves on one side only between the reference set-up and another, at the approach speed of the other.
 *
 * @param surface its name
 * @param stays where the side that does not move is
 * @param stick the roll stick that rolls most against it
 * @param share of full stick that keeps the wings level, above 1 where full stick does not
 * @param slowest airspeed down to which full stick keeps them level, m/s; empty where it does at none that was looked at
 */
public record OneSided(
        String surface,
        Stays stays,
        String stick,
        @Measure(Dimension.FRACTION) Headline share,
        Optional<Double> slowest) {

    /** Places of the side that does not move. */
    public enum Stays {
        /** As the reference set-up has it, while all else goes out of it. */
        BACK,
        /** As the other set-up has it, while all else goes back. */
        OUT
    }

    /** Answers to whether full stick holds it. */
    public enum Held {
        /** Over the whole band. */
        HELD,
        /** Its band goes either way. */
        MAY_BE,
        /** It does not. */
        NOT
    }

    /** Whether full stick keeps the wings level at the approach speed. */
    public Held held() {
        if (!(share instanceof Headline.Known known) || known.value() > 1) {
            return Held.NOT;
        }
        return known.high() <= 1 ? Held.HELD : Held.MAY_BE;
    }
}
