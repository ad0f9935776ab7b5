/**
 * Records of flights: what was noticed, how it was told, and in what air.
 *
 * <p>Takes: numbers in SI units and radians.
 *
 * <p>Gives: immutable records that know no solver and no file.
 */
@NullMarked
package throwline.notes;

import org.jspecify.annotations.NullMarked;
