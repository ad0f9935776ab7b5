/**
 * Pages to be looked at: each one self-contained HTML file.
 *
 * <p>Takes: results of study, the rows of report.table and the pictures of report.chart.
 *
 * <p>Gives: HTML text, made by the templates in src/main/jte.
 */
@NullMarked
package throwline.report.html;

import org.jspecify.annotations.NullMarked;
