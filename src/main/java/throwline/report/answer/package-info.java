/**
 * Answers as documents: which sections, sentences, tables and pictures say what a result holds.
 *
 * <p>Takes: results of study and validation.
 *
 * <p>Gives: one document an answer, from which every renderer works.
 */
@NullMarked
package throwline.report.answer;

import org.jspecify.annotations.NullMarked;
