package throwline.logs;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Channels of a log, each in its SI unit. */
public enum Channel {
    /** Seconds, rising. */
    TIME,
    /** Metres. */
    HEIGHT,
    /** Pascals. */
    PRESSURE,
    /** Metres per second over the ground. */
    GROUND_SPEED,
    /** Way over the ground, radians clockwise from north. */
    COURSE,
    /** Radians. */
    LATITUDE,
    /** Radians. */
    LONGITUDE,
    /** Metres per second as the sensor shows it. */
    AIRSPEED,
    /** Share of full throttle. */
    THROTTLE,
    /** Radians, trailing edge down positive. */
    ELEVATOR,
    /** Share of full stick, either sign. */
    ROLL_STICK,
    /** Radians per second, right wing down positive. */
    ROLL_RATE,
    /** Place of the set-up among those of the log, -1 for none. */
    SWITCH,
    /** Amperes. */
    CURRENT,
    /** Volts. */
    VOLTAGE;

    /** Its name in a file of flights. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The channel of this name. */
    public static Optional<Channel> of(String key) {
        return Arrays.stream(values()).filter(c -> c.key().equals(key)).findFirst();
    }

    /** Names of all. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Channel::key).toList();
    }
}
