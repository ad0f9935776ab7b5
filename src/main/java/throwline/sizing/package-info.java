/**
 * Inverse problems: the throw for a wanted speed, angle, trim or roll rate, and mix curves.
 *
 * <p>Takes: a model ready to fly, and what its pilot wants. Every candidate is flown by {@link throwline.flight.Flight},
 * as a comparison of set-ups does.
 *
 * <p>Gives: set-ups, sticks and curves, what stops them, and what one degree more brings.
 */
@NullMarked
package throwline.sizing;

import org.jspecify.annotations.NullMarked;
