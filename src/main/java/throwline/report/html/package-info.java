/**
 * Pages to be looked at: each one self-contained HTML file.
 *
 * <p>Takes: documents, whose pictures are drawn when they are shown.
 *
 * <p>Gives: HTML text, made by the templates in src/main/jte.
 */
@NullMarked
package throwline.report.html;

import org.jspecify.annotations.NullMarked;
