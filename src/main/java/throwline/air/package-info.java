/**
 * Standard atmosphere, density and viscosity.
 *
 * <p>Takes: height and temperature.
 *
 * <p>Gives: the air that the model flies in.
 */
@NullMarked
package throwline.air;

import org.jspecify.annotations.NullMarked;
