/**
 * The lifting line of one lifting surface: span grid, problem, solver, solution, wake elsewhere.
 *
 * <p>Takes: section curves and the geometry of the wing.
 *
 * <p>Gives: circulation along the span, coefficients, margins to the stall, wake velocity.
 *
 * <h2>Why there is one answer</h2>
 *
 * <p>Let {@code g} be circulation over speed, {@code A} the downwash matrix and {@code f} the hull of a section's lift
 * curve, which never falls. Each strip asks {@code g = (c u / 2) f(angle - (A g) / u)}. With {@code D = (c / 2) f'}, not
 * negative, the derivative of the left side minus the right is {@code I + D A}. A control point lies inside its own
 * strip, so {@code A} is positive on its diagonal and not positive elsewhere, and its rows sum to something not negative
 * (a strip's own edges are nearer than anybody else's). Every row of {@code I + D A} therefore has a diagonal that exceeds
 * the sum of the sizes of its other entries by at least 1. Along the straight line between two supposed solutions the mean
 * derivative has the same property, so it is not singular and the two are one; its inverse is no larger than 1 in the
 * largest-entry norm, so the error of {@code g} is at most the largest residual. Newton's direction lowers the largest
 * residual at first, so halving the step finds a lower one until the residual is within rounding.
 *
 * <h2>How far that reaches</h2>
 *
 * <ul>
 *   <li>It speaks of the hull, not of the falling part of a curve past its stall. Lift past the stall is read from the
 *       falling curve at the angles of the hull solution; many answers of the falling curve itself are not looked for.
 *   <li>Dihedral, roll, pitch and sideslip change angles only: the argument holds. A yaw rate divides each row's downwash
 *       by its own positive speed: it holds while every strip moves forward.
 *   <li>Trailing images of the ground keep the signs of {@code A}: it holds. Bound images are taken from the answer
 *       before and iterated: each pass has one answer; that the passes settle is shown by their status, not proved.
 *   <li>The chord correction adds more to the diagonal than it takes from the mirror entry (odd factor not below the even
 *       one): it holds.
 *   <li>Sweep enters the section law by its cosine only, with the straight-line matrix: it holds, up to 15 degrees by
 *       decision. Swept bound vortices in the matrix would put positive entries beside the diagonal and end it.
 *   <li>Half-size solves of symmetric cases fold mirror columns together: a sum of what was dominant is dominant.
 * </ul>
 */
@NullMarked
package throwline.liftingline;

import org.jspecify.annotations.NullMarked;
