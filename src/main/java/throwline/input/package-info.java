/**
 * Files in: model file, polar files. Every problem is located by line and column.
 *
 * <p>Takes: files and text.
 *
 * <p>Gives: model records, airfoils, problems.
 */
@NullMarked
package throwline.input;

import org.jspecify.annotations.NullMarked;
