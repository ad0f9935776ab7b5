package throwline.input;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.logs.Channel;

/**
 * Reads B records of IGC files (layout MEMORY; FAI International Gliding Commission, technical specification of flight
 * recorders): {@code BHHMMSSDDMMmmmNDDDMMmmmEAPPPPPGGGGG}, heights in metres by pressure on 1013.25 hPa and by satellites.
 */
final class IgcRecords {

    private static final Pattern FIX = Pattern.compile(
            "B(\\d{6})(\\d{2})(\\d{5})([NS])(\\d{3})(\\d{5})([EW])([AV])([-\\d]\\d{4})([-\\d]\\d{4}).*");

    private final LogRows rows;
    private final Problems problems;

    IgcRecords(LogRows rows, Problems problems) {
        this.rows = rows;
        this.problems = problems;
    }

    void read(String text) {
        int number = 0;
        boolean pressure = text.lines()
                .map(FIX::matcher)
                .anyMatch(m -> m.matches() && !m.group(9).matches("0+"));
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            if (!line.startsWith("B")) {
                continue;
            }
            Matcher fix = FIX.matcher(line);
            if (!fix.matches()) {
                rows.drop();
            } else {
                take(fix, pressure, number);
            }
            if (problems.isFull()) {
                return;
            }
        }
    }

    private void take(Matcher fix, boolean pressure, int line) {
        double time = LogClock.digits(fix.group(1)).orElse(Double.NaN);
        if (!Double.isNaN(time) && rows.begin(time, line)) {
            rows.put(
                    Channel.LATITUDE,
                    angle(fix.group(2), fix.group(3), fix.group(4).equals("S")));
            rows.put(
                    Channel.LONGITUDE,
                    angle(fix.group(5), fix.group(6), fix.group(7).equals("W")));
            rows.put(Channel.HEIGHT, Integer.parseInt(pressure ? fix.group(9) : fix.group(10)));
        }
    }

    /** Degrees, and minutes in thousandths. */
    private static double angle(String degrees, String minutes, boolean negative) {
        double whole = Integer.parseInt(degrees) + Integer.parseInt(minutes) / 60_000.0;
        return Math.toRadians(negative ? -whole : whole);
    }
}
