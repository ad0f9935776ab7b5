/**
 * Sheets for the bench, the field and the transmitter's tray, on paper and for a spreadsheet.
 *
 * <p>Takes: results of study.
 *
 * <p>Gives: PDF, HTML and CSV files.
 */
@NullMarked
package throwline.report.sheet;

import org.jspecify.annotations.NullMarked;
