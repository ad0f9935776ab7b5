/**
 * Servo arm, rod and horn: angles both ways, ratio, where they lock, how much of the servo's swing is used.
 *
 * <p>Takes: model.
 *
 * <p>Gives: control runs.
 */
@NullMarked
package throwline.linkage;

import org.jspecify.annotations.NullMarked;
