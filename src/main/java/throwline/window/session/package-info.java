/**
 * The window without its window: what is open, what the hand does, what is worked out, what is kept safe.
 *
 * <p>Takes: a model file, and what a person does.
 *
 * <p>Gives: the state that views show, numbers that follow the hand, and the file with its comments and order.
 */
@NullMarked
package throwline.window.session;

import org.jspecify.annotations.NullMarked;
