package throwline.report.chart;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Chart as data.
 *
 * @param name file name without extension
 * @param caption lines above and below
 * @param width points
 * @param height points, lines included
 * @param across the axis that all panels share
 * @param beside the same in another unit, above
 * @param room for names and labels around the panels
 * @param panels from the top down
 */
record Picture(
        String name,
        Caption caption,
        int width,
        int height,
        Axis across,
        Optional<Axis> beside,
        RectangleInsets room,
        List<Panel> panels) {

    Picture {
        panels = List.copyOf(panels);
    }

    /** Curves that are named at their ends. */
    static Picture ofCurves(String name, Caption caption, int height, Axis across, Panel... panels) {
        return new Picture(
                name, caption, Layout.WIDE.width(), height, across, Optional.empty(), ChartStyle.ENDS, List.of(panels));
    }

    /** Rows with names on the left. */
    static Picture ofRows(String name, Caption caption, Layout layout, int height, Axis across, Panel... panels) {
        return new Picture(
                name, caption, layout.width(), height, across, Optional.empty(), layout.room(), List.of(panels));
    }

    /** The same in this width. */
    Picture wide(Layout layout) {
        return new Picture(name, caption, layout.width(), height, across, beside, room, panels);
    }

    /** The same with another unit above. */
    Picture beside(Axis above) {
        return new Picture(name, caption, width, height, across, Optional.of(above), room, panels);
    }

    /** Least of some places and a floor. */
    static double least(List<Place> places, ToDoubleFunction<Place> value, double atMost) {
        return Math.min(atMost, places.stream().mapToDouble(value).min().orElse(atMost));
    }

    /** Largest of some places and a ceiling. */
    static double most(List<Place> places, ToDoubleFunction<Place> value, double atLeast) {
        return Math.max(atLeast, places.stream().mapToDouble(value).max().orElse(atLeast));
    }
}
