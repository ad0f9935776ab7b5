package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import throwline.logs.FlightLog;
import throwline.notes.LogSource;
import throwline.notes.LogSource.Column;

/** Reads the text of a synthetic log as a file of flights would have it read. */
public final class LoggedText {

    private LoggedText() {}

    private static Column column(String name, String unit) {
        return new Column(name, unit, List.of(), Map.of(), OptionalDouble.empty(), OptionalDouble.empty(), "");
    }

    /** What a file of flights would say of it. */
    public static LogSource source(boolean sensor, List<String> setUps) {
        Map<String, Column> columns = new HashMap<>();
        columns.put("time", column("seconds", "s"));
        columns.put("height", column("height baro m", "m"));
        columns.put("ground speed", column("ground speed m/s", "m/s"));
        columns.put("course", column("course deg", "deg"));
        columns.put("throttle", column("throttle %", ""));
        columns.put("elevator", column("elevator deg", "deg"));
        columns.put("roll rate", column("roll deg/s", "deg/s"));
        if (sensor) {
            columns.put("airspeed", column("airspeed m/s", "m/s"));
        }
        Map<Double, String> means = new HashMap<>();
        for (int i = 0; i < setUps.size(); i++) {
            means.put((double) i, setUps.get(i));
        }
        OptionalDouble none = OptionalDouble.empty();
        columns.put("roll stick", new Column("aileron %", "", List.of(), Map.of(), none, none, "low rates"));
        columns.put("switch", new Column("switch", "", List.of(), means, none, none, ""));
        return new LogSource("flight.csv", columns, Map.of(), false, false, List.of(), List.of());
    }

    /** The log. */
    public static FlightLog read(String text, boolean sensor, List<String> setUps) {
        ReadLog read = LogFile.read(text, "flight.csv", source(sensor, setUps), 0);
        assertThat(read).isInstanceOf(ReadLog.Log.class);
        return ((ReadLog.Log) read).log();
    }
}
