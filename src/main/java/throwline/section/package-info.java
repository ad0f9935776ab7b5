/**
 * Two-dimensional aerodynamics of an airfoil with a moved surface at model Reynolds numbers.
 *
 * <p>Takes: measured polars and published methods.
 *
 * <p>Gives: one curve per airfoil, deflection and Reynolds number, with the basis of every stretch.
 */
@NullMarked
package throwline.section;

import org.jspecify.annotations.NullMarked;
