/**
 * Servo arm, rod and horn: angles both ways, ratio, where they lock, how much of the servo's swing is used, and where a
 * servo holds a surface against the air.
 *
 * <p>Takes: model.
 *
 * <p>Gives: control runs, held surfaces.
 */
@NullMarked
package throwline.linkage;

import org.jspecify.annotations.NullMarked;
