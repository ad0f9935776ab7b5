package throwline.notes;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.model.SetUp;

/**
 * Flight, or several on one day in the same air with the same pack.
 *
 * @param name unique among the flights of a model: the date, with a number where a day has several
 * @param date as written, year-month-day; empty where not told
 * @param pack name of the pack
 * @param weight as weighed that day, kg
 * @param balance as found that day, m behind the leading edge at the middle
 * @param air what is known of the air
 * @param wind what was said of the wind; empty where nothing was
 * @param noticed what was noticed
 * @param asFlown where the surfaces stood, for set-ups of which that is told
 * @param counts false where it is kept and not used
 * @param because why it is not used; empty where nothing is said
 * @param log log of it; empty where there is none
 */
public record FlownDay(
        String name,
        String date,
        String pack,
        OptionalDouble weight,
        OptionalDouble balance,
        AirOfDay air,
        Optional<Wind> wind,
        List<Noticed> noticed,
        List<SetUp> asFlown,
        boolean counts,
        String because,
        Optional<LogSource> log) {

    public FlownDay {
        noticed = List.copyOf(noticed);
        asFlown = List.copyOf(asFlown);
    }

    /**
     * The air of a day; what is empty is taken from the field of the model.
     *
     * @param temperature K
     * @param pressure at the field, Pa
     * @param heightAboveSea m
     */
    public record AirOfDay(OptionalDouble temperature, OptionalDouble pressure, OptionalDouble heightAboveSea) {

        /** Nothing told. */
        public static AirOfDay unknown() {
            return new AirOfDay(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        }
    }

    /**
     * Wind as told.
     *
     * @param speed m/s
     * @param toldBy how
     * @param where at the height of the model or at the ground
     */
    public record Wind(double speed, WindTold toldBy, Where where) {}

    /** Ways of telling the wind. */
    public enum WindTold {
        /** On the skin. */
        FEEL,
        /** From a flag or trees. */
        FLAG,
        /** With an anemometer. */
        ANEMOMETER,
        /** From a forecast. */
        FORECAST,
        /** From a log. */
        LOG
    }

    /** Heights that a wind is told at. */
    public enum Where {
        /** Where the model flies. */
        MODEL,
        /** Two metres above the ground. */
        GROUND
    }
}
