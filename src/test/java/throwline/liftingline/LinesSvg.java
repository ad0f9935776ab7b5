package throwline.liftingline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A plain line drawing for the validation folder: labelled axes, straight or logarithmic, marks and names beside the lines.
 * Colours of Okabe and Ito, told apart by dashes as well.
 */
final class LinesSvg {

    private static final int WIDTH = 860;
    private static final int HEIGHT = 520;
    private static final int LEFT = 80;
    private static final int RIGHT = 230;
    private static final int TOP = 60;
    private static final int BOTTOM = 60;
    private static final List<String> COLOURS =
            List.of("#000000", "#0072B2", "#D55E00", "#009E73", "#CC79A7", "#E69F00", "#56B4E9");
    private static final List<String> DASHES = List.of("", "9 4", "3 3", "12 3 2 3", "16 4", "5 2", "2 4");

    private final String title;
    private final String across;
    private final String up;
    private final boolean logarithmic;
    private final List<Line> lines = new ArrayList<>();

    /** One line; marks where the points are few. */
    private record Line(String name, List<double[]> points, boolean marked) {}

    LinesSvg(String title, String across, String up, boolean logarithmic) {
        this.title = title;
        this.across = across;
        this.up = up;
        this.logarithmic = logarithmic;
    }

    LinesSvg line(String name, List<double[]> points, boolean marked) {
        lines.add(new Line(name, List.copyOf(points), marked));
        return this;
    }

    String draw(double[] ticksAcross, double[] ticksUp) {
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"13\">%n"
                        + "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>%n",
                WIDTH,
                HEIGHT,
                WIDTH,
                HEIGHT));
        svg.append(text(LEFT, 28, "start", "font-size=\"17\" font-weight=\"bold\"", title));
        Scale x = new Scale(ticksAcross[0], ticksAcross[ticksAcross.length - 1], LEFT, WIDTH - RIGHT);
        Scale y = new Scale(ticksUp[0], ticksUp[ticksUp.length - 1], HEIGHT - BOTTOM, TOP);
        for (double tick : ticksAcross) {
            svg.append(grid(x.at(tick), TOP, x.at(tick), HEIGHT - BOTTOM));
            svg.append(text(x.at(tick), HEIGHT - BOTTOM + 20, "middle", "", number(tick)));
        }
        for (double tick : ticksUp) {
            svg.append(grid(LEFT, y.at(tick), WIDTH - RIGHT, y.at(tick)));
            svg.append(text(LEFT - 8, y.at(tick) + 4, "end", "", number(tick)));
        }
        svg.append(text((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 14, "middle", "", across));
        svg.append(text(LEFT, TOP - 12, "start", "", up));
        double lastLabel = 0;
        for (Line line : lines.stream()
                .sorted((a, b) -> Double.compare(y.at(end(a)), y.at(end(b))))
                .toList()) {
            double wanted = y.at(end(line)) + 4;
            lastLabel = Math.max(wanted, lastLabel + 17);
            svg.append(curve(line, lines.indexOf(line), x, y, lastLabel));
        }
        return svg.append("</svg>\n").toString();
    }

    private static double end(Line line) {
        return line.points().get(line.points().size() - 1)[1];
    }

    private static String curve(Line line, int number, Scale x, Scale y, double label) {
        String colour = COLOURS.get(number % COLOURS.size());
        String path = line.points().stream()
                .map(p -> String.format(Locale.ROOT, "%.1f,%.1f", x.at(p[0]), y.at(p[1])))
                .collect(Collectors.joining(" "));
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>%n",
                path,
                colour,
                DASHES.get(number % DASHES.size())));
        if (line.marked()) {
            for (double[] p : line.points()) {
                svg.append(String.format(
                        Locale.ROOT,
                        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>%n",
                        x.at(p[0]),
                        y.at(p[1]),
                        colour));
            }
        }
        svg.append(text(WIDTH - RIGHT + 10, label, "start", "fill=\"" + colour + "\"", line.name()));
        return svg.toString();
    }

    private static String grid(double x1, double y1, double x2, double y2) {
        return String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#e2e2e2\"/>%n",
                x1,
                y1,
                x2,
                y2);
    }

    private static String text(double x, double y, String anchor, String more, String words) {
        return String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" %s>%s</text>%n",
                x,
                y,
                anchor,
                more,
                words.replace("&", "&amp;").replace("<", "&lt;"));
    }

    private static String number(double value) {
        return value != 0 && Math.abs(value) < 1e-3
                ? String.format(Locale.ROOT, "%.0e", value)
                : String.format(Locale.ROOT, "%s", value == Math.rint(value) ? (Object) (long) value : (Object) value);
    }

    /** From a value to its place in the drawing. */
    private final class Scale {
        private final double low;
        private final double high;
        private final double start;
        private final double stop;

        Scale(double low, double high, double start, double stop) {
            this.low = reading(low);
            this.high = reading(high);
            this.start = start;
            this.stop = stop;
        }

        private double reading(double value) {
            return logarithmic ? Math.log(value) : value;
        }

        double at(double value) {
            return start + (reading(value) - low) / (high - low) * (stop - start);
        }
    }
}
