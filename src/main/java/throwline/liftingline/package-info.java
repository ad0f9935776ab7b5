/**
 * The lifting line of one lifting surface: span grid, problem, solver, solution, wake elsewhere.
 *
 * <p>Takes: section curves and the geometry of the wing.
 *
 * <p>Gives: circulation along the span, coefficients, margins to the stall, wake velocity.
 */
@NullMarked
package throwline.liftingline;

import org.jspecify.annotations.NullMarked;
