/**
 * Interpolation between known values.
 *
 * <p>Takes: numbers.
 *
 * <p>Gives: numbers.
 */
@NullMarked
package throwline.numerics;

import org.jspecify.annotations.NullMarked;
