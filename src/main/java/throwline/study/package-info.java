/**
 * One call per question: a model and a question in, a result record out.
 *
 * <p>Takes: model records and airfoils.
 *
 * <p>Gives: result records in SI units, with bands, notes and warnings as codes.
 */
@NullMarked
package throwline.study;

import org.jspecify.annotations.NullMarked;
