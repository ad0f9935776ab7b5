/**
 * Quantities as a person writes them: reading and printing, trade units at the edges only.
 *
 * <p>Takes: text, or a value in SI units.
 *
 * <p>Gives: a value in SI units, or text.
 */
@NullMarked
package throwline.units;

import org.jspecify.annotations.NullMarked;
