package throwline.notes;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A log that belongs to a flight, as the notes tell of it.
 *
 * @param file name, relative to the notes
 * @param columns column of the file by what it holds; empty for formats that need none
 * @param lags how far a channel is behind, s, by what it holds
 * @param decimalComma true where numbers are written with a comma in place of the point
 * @param temperatureCorrected true where the logger itself corrects its heights for temperature
 * @param spans set-ups by time, for logs without a switch channel
 * @param struckOut pieces that do not count, by their number
 */
public record LogSource(
        String file,
        Map<String, Column> columns,
        Map<String, Double> lags,
        boolean decimalComma,
        boolean temperatureCorrected,
        List<Span> spans,
        List<Integer> struckOut) {

    public LogSource {
        columns = Map.copyOf(columns);
        lags = Map.copyOf(lags);
        spans = List.copyOf(spans);
        struckOut = List.copyOf(struckOut);
    }

    /**
     * A column and how it is read.
     *
     * @param name in the header of the file
     * @param unit as spelt; empty where it needs none
     * @param points pairs of channel value and what it means, rising; empty where the unit says it
     * @param meanings set-up by channel value, for a switch
     * @param full channel value of full stick or throttle
     * @param shut channel value of a closed throttle
     * @param stick stick that the channel moves
     */
    public record Column(
            String name,
            String unit,
            List<double[]> points,
            Map<Double, String> meanings,
            OptionalDouble full,
            OptionalDouble shut,
            String stick) {
        public Column {
            points = List.copyOf(points);
            meanings = Map.copyOf(meanings);
        }
    }

    /**
     * A set-up from one time to another.
     *
     * @param from s since the start of the log or of the day, as the log counts
     * @param to the same
     * @param setUp its name
     */
    public record Span(double from, double to, String setUp) {}
}
