/**
 * The one file of words that a person reads.
 *
 * <p>Takes: a key and its arguments.
 *
 * <p>Gives: the sentence.
 */
@NullMarked
package throwline.words;

import org.jspecify.annotations.NullMarked;
