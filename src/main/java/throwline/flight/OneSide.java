package throwline.flight;

import java.util.Optional;

/**
 * The roll stick against a wing surface of which one side stays behind.
 *
 * @param stick the roll stick that rolls most against it
 * @param share of full stick that keeps the wings level at the speed asked about: above 1 where full stick does not; empty
 *     where the stick does nothing against it, or the wing does not carry the model at that speed
 * @param slowest airspeed down to which full stick keeps the wings level, m/s; empty where it does at none that was looked at
 */
public record OneSide(String stick, Optional<Double> share, Optional<Double> slowest) {}
