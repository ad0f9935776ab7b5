/**
 * Answers as pictures: one house style, one class a chart. The only package that loads drawing classes.
 *
 * <p>Takes: results of study.
 *
 * <p>Gives: SVG and PNG.
 */
@NullMarked
package throwline.report.chart;

import org.jspecify.annotations.NullMarked;
