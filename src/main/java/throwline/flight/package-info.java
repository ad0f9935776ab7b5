/**
 * The whole model at one set-up: forces, trim, stall, descent, roll.
 *
 * <p>Takes: the model, the lifting line of wing and tail, the air.
 *
 * <p>Gives: speeds, angles and rates in SI units.
 */
@NullMarked
package throwline.flight;

import org.jspecify.annotations.NullMarked;
