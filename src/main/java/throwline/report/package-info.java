/**
 * What a person sees: tables, charts, JSON. Every conversion into trade units for display happens here.
 *
 * <p>Takes: results of study.
 *
 * <p>Gives: text and picture files.
 */
@NullMarked
package throwline.report;

import org.jspecify.annotations.NullMarked;
