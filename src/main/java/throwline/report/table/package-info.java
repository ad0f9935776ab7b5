/**
 * Answers for a person at a terminal: tables and the sentences below them.
 *
 * <p>Takes: results of study.
 *
 * <p>Gives: text.
 */
@NullMarked
package throwline.report.table;

import org.jspecify.annotations.NullMarked;
