/** Drawings that point at what a value of the model file measures; geometry only, no screen. */
@NullMarked
package throwline.window.sketch;

import org.jspecify.annotations.NullMarked;
