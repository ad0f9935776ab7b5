/**
 * Documents as text of a terminal or of a text file.
 *
 * <p>Takes: a document and the width, letters and styles that the place can show.
 *
 * <p>Gives: lines.
 */
@NullMarked
package throwline.report.terminal;

import org.jspecify.annotations.NullMarked;
