/**
 * Answers for programs: JSON and CSV, SI units, angles in degrees.
 *
 * <p>Takes: results of study.
 *
 * <p>Gives: text.
 */
@NullMarked
package throwline.report.data;

import org.jspecify.annotations.NullMarked;
