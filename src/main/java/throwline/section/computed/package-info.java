/**
 * Sections that nobody measured, from their outline and the measurements of others.
 *
 * <p>Takes: an outline, the measured airfoils, and what was learned from them.
 *
 * <p>Gives: an airfoil whose runs are those of a measured one, moved to what is expected of the outline.
 */
@NullMarked
package throwline.section.computed;

import org.jspecify.annotations.NullMarked;
