/**
 * Boundary layer along an outline, and the drag that it leaves in the wake.
 *
 * <p>Takes: the speed along a surface without friction, a Reynolds number.
 *
 * <p>Gives: where the flow turns turbulent and separates, and the profile drag.
 */
@NullMarked
package throwline.section.boundary;

import org.jspecify.annotations.NullMarked;
