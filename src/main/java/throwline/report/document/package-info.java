/**
 * What an answer says, before anything is printed: headings, sentences, tables, pictures, whose numbers are still numbers.
 *
 * <p>Takes: words by key, names of the user, values in SI units.
 *
 * <p>Gives: documents, which the renderers for terminal, page and paper show, and the one class that formats their values.
 */
@NullMarked
package throwline.report.document;

import org.jspecify.annotations.NullMarked;
