package throwline.logs;

import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/** A synthetic log as files of open standards, which know positions, heights and at most a speed over the ground. */
public final class StandardLogs {

    private static final int NOON = 43_200;
    private static final int FIELD = 120;

    private final List<Row> rows;

    private record Row(double time, double height, double speed, String course, double latitude, double longitude) {}

    /** The rows of a synthetic log. */
    public StandardLogs(String cells) {
        rows = cells.lines()
                .filter(line -> !line.startsWith("#") && !line.startsWith("seconds"))
                .map(line -> line.split(",", -1))
                .map(c -> new Row(
                        Double.parseDouble(c[0]),
                        Double.parseDouble(c[1]) + FIELD,
                        Double.parseDouble(c[2]),
                        c[3],
                        Double.parseDouble(c[4]),
                        Double.parseDouble(c[5])))
                .toList();
    }

    /** NMEA 0183: RMC and GGA for every row. */
    public String nmea() {
        StringBuilder text = new StringBuilder();
        for (Row row : rows) {
            String at = minutes(row.latitude, 2) + ",N," + minutes(row.longitude, 3) + ",E,";
            String clock = clock(row.time, "%02d%02d%05.2f");
            double knots = row.speed * 3600 / 1852;
            text.append(sentence("GPRMC," + clock + ",A," + at + say("%.2f,", knots) + row.course + ",181026,,,A"));
            text.append(sentence("GPGGA," + clock + "," + at + say("1,09,0.9,%.1f,M,47.0,M,,", row.height)));
        }
        return text.toString();
    }

    /** GPX 1.1: a point a second. */
    public String gpx() {
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\"?>\n<gpx version=\"1.1\"><trk><trkseg>\n");
        for (Row row : seconds()) {
            text.append(say("<trkpt lat=\"%.6f\" lon=\"%.6f\">", row.latitude, row.longitude))
                    .append(say("<ele>%.1f</ele>", row.height))
                    .append("<time>2026-10-18T" + clock(row.time, "%02d:%02d:%05.2f") + "Z</time></trkpt>\n");
        }
        return text + "</trkseg></trk></gpx>\n";
    }

    /** IGC: a B record a second. */
    public String igc() {
        StringBuilder text = new StringBuilder("AXXX001\nHFDTE181026\n");
        for (Row row : seconds()) {
            text.append("B" + clock(Math.floor(row.time), "%02d%02d%02.0f"))
                    .append(say("%02d%05d", (int) row.latitude, Math.round(row.latitude % 1 * 60_000)) + "N")
                    .append(say("%03d%05d", (int) row.longitude, Math.round(row.longitude % 1 * 60_000)) + "EA")
                    .append(say("%05d%05d%n", Math.round(row.height), Math.round(row.height) + 45));
        }
        return text.toString();
    }

    private List<Row> seconds() {
        TreeMap<Long, Row> first = new TreeMap<>();
        rows.forEach(row -> first.putIfAbsent((long) row.time, row));
        return List.copyOf(first.values());
    }

    private static String clock(double time, String form) {
        int whole = NOON + (int) time;
        return say(form, whole / 3600, whole / 60 % 60, whole % 60 + time - (int) time);
    }

    private static String minutes(double degrees, int digits) {
        return say("%0" + digits + "d%07.4f", (int) degrees, degrees % 1 * 60);
    }

    private static String sentence(String words) {
        int sum = words.chars().reduce(0, (a, b) -> a ^ b);
        return say("$%s*%02X%n", words, sum);
    }

    private static String say(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
