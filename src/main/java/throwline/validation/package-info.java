/**
 * Published and measured cases as data, and what the product says of them.
 *
 * <p>Takes: a folder of cases (CSV files, and model files that every command can read), airfoils, section curves.
 *
 * <p>Gives: the book: every case's checks, statistics by quantity and basis, and the bands that follow from them.
 */
@NullMarked
package throwline.validation;

import org.jspecify.annotations.NullMarked;
