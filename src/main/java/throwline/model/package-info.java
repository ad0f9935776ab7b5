/**
 * Records of the aeroplane and their rules. Plain doubles in SI units and radians.
 *
 * <p>Takes: nothing.
 *
 * <p>Gives: the model.
 */
@NullMarked
package throwline.model;

import org.jspecify.annotations.NullMarked;
