/**
 * The lifting line of one lifting surface: span grid, problem, solver, solution, wake elsewhere.
 *
 * <p>Takes: section curves and the geometry of the wing.
 *
 * <p>Gives: circulation along the span, coefficients, margins to the stall, wake velocity.
 *
 * <h2>Why there is one answer</h2>
 *
 * <p>Let {@code g} be circulation over speed, {@code A} the downwash matrix, {@code c} chord, {@code u} local speed, and
 * {@code f} the hull of a section's lift curve, which never falls. Each strip asks
 * {@code g = (c u / 2) f(angle - (A g) / u)}. With {@code D = (c / 2) f'}, not negative, the derivative of the left side
 * minus the right is {@code I + D A}. A control point lies inside its own strip, so {@code A} is positive on its diagonal
 * and not positive elsewhere, and its rows sum to something positive (the sum is what one vortex from tip to tip does
 * inside the span). Every row of {@code I + D A} therefore has a diagonal that exceeds the sum of the sizes of its other
 * entries by at least 1. Along the straight line between two supposed solutions the mean derivative has the same
 * property, so it is not singular and the two are one; its inverse is no larger than 1 in the largest-entry norm, so no
 * entry of {@code g} is further from the answer than the largest residual of {@code g}. (In section lift this is the
 * largest residual times {@code c u} where that is largest over {@code c u} at the strip.) There is an answer because the
 * right side is continuous and bounded by the sections' least and largest lift.
 *
 * <h2>Why it is found</h2>
 *
 * <p>Giving one strip the circulation that satisfies it with the others held leaves at most the share
 * {@code d a / (1 + d a)} of the largest error there, {@code a} being the strip's own entry of {@code A} and {@code d} the
 * steepest {@code D}: a sweep over all strips draws nearer to the answer from anywhere, for hulls with kinks as well, but
 * slowly. Newton's step is quick near the answer and is taken only where it lowers the largest residual below the least
 * so far. Taken without end, it brings the residual to zero; else there are sweeps only from some point on, and these do.
 *
 * <h2>How far that reaches</h2>
 *
 * <ul>
 *   <li>It speaks of the hull, not of the falling part of a curve past its stall. Lift past the stall is read from the
 *       falling curve at the angles of the hull solution; many answers of the falling curve itself are not looked for.
 *   <li>Dihedral, roll, pitch and sideslip change angles only: the argument holds. A yaw rate divides each row's downwash
 *       by its own speed: it holds while every strip moves forward; where one does not, the status says not converged.
 *   <li>Trailing images of the ground keep the signs of {@code A} and of its rows' sums: it holds.
 *   <li>Bound images of the ground add {@code e L - D U} to the derivative: {@code L} is the speed that they take away,
 *       {@code U} the upwash, {@code e = (c / 2) (f - f' flow)}. It holds while the rows of that stay below 1 in sum of
 *       sizes. With lift up to 2 that is so down to a height of about a third of a chord; below, it is not claimed.
 *   <li>The chord correction adds to the diagonal at least as much as it adds, in size, to the mirror entry, as long as
 *       neither factor is below 1: it holds.
 *   <li>Sweep enters the section law by its cosine only, with the straight-line matrix: it holds, up to 15 degrees by
 *       decision. Swept bound vortices in the matrix would put positive entries beside the diagonal and end it.
 *   <li>The jet of a propeller makes a strip's own air faster, which cancels in {@code D A} as {@code u} does above; turns
 *       it, which changes angles only; and takes a share of the section's lift, which makes {@code f'} smaller and keeps it
 *       not negative: it holds for any jet in which every strip moves forward. That the jet's edges would mirror the trailing
 *       vortices is left out of {@code A} and is in the share alone.
 *   <li>Half-size solves of symmetric cases fold mirror columns together: the size of a sum is no more than the sum of
 *       sizes, so it holds.
 * </ul>
 */
@NullMarked
package throwline.liftingline;

import org.jspecify.annotations.NullMarked;
