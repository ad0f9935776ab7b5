/**
 * The window: views of a {@link throwline.window.session session}, and how it looks.
 *
 * <p>Takes: a model file, or none.
 *
 * <p>Gives: pages that show what a model does while a hand moves its surfaces.
 */
@NullMarked
package throwline.window;

import org.jspecify.annotations.NullMarked;
