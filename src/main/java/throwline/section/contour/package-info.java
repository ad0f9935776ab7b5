/**
 * Flow without friction round the outline of a section.
 *
 * <p>Takes: an outline as a polygon, a hinge and its angle.
 *
 * <p>Gives: the speed along the outline, lift, moment and the angle without lift.
 */
@NullMarked
package throwline.section.contour;

import org.jspecify.annotations.NullMarked;
