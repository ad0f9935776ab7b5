package throwline.report.chart;

import org.jfree.chart.JFreeChart;

/**
 * One chart, ready to be drawn.
 *
 * @param name file name without extension
 * @param description what it shows, for those who cannot see it
 * @param width points
 * @param height points
 * @param chart the drawing
 */
record Picture(String name, String description, int width, int height, JFreeChart chart) {}
