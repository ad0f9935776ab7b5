package throwline.model;

import java.util.OptionalDouble;

/**
 * The elevator as it was read after level flight, trimmed, in the set-up that others are compared with and with the first
 * battery.
 *
 * @param elevator rad, trailing edge down positive
 * @param speed at which it was flown, m/s; empty for the throttle of a cruise
 */
public record CruiseTrim(double elevator, OptionalDouble speed) {}
