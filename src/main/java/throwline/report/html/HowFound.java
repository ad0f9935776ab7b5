package throwline.report.html;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is known of the numbers of a row besides their values: their name in JSON, their unit, their band. */
enum HowFound {
    STALLS("row.stalls", "stallSpeed", "m/s", false),
    COMES_IN("row.comein", "approachSpeed", "m/s", false),
    DESCENT("row.descent", "descentAngle", "deg", true),
    SINK("row.sink", "sinkRate", "m/s", false),
    ELEVATOR("row.elevator", "elevator", "deg", false),
    MIX("row.mix", "elevatorChange", "deg", false),
    ROLL("row.roll", "rollRate", "deg/s", false),
    ROUND_OUT("row.roundout", "flareHeight", "m", true),
    FLOAT("row.floats", "float", "m", true),
    BUMPS("row.bumps", "gustLimit", "m/s", false),
    LANDING("row.stops", "landingDistance", "m", false),
    SURFACE_SPEED("row.flap-limit", "flapSpeedLimit", "m/s", false);

    private final String row;
    private final String json;
    private final String unit;
    private final boolean byKind;

    HowFound(String row, String json, String unit, boolean byKind) {
        this.row = row;
        this.json = json;
        this.unit = unit;
        this.byKind = byKind;
    }

    /** Of a row with this key, where it shows a headline number. */
    static Optional<HowFound> of(String row) {
        return List.of(values()).stream().filter(how -> how.row.equals(row)).findFirst();
    }

    /** The name in JSON. */
    String json() {
        return json;
    }

    /** The unit in JSON. */
    String unit() {
        return unit;
    }

    /** What a value in SI units is in the unit of JSON. */
    double inUnit(double value) {
        return unit.startsWith("deg") ? Math.toDegrees(value) : value;
    }

    /** Key of the sentence that tells how it is worked out. */
    String formula() {
        return "page.how." + name().toLowerCase(Locale.ROOT);
    }

    /** Key of the sentence that names the sources. */
    String source() {
        return "page.source." + name().toLowerCase(Locale.ROOT);
    }

    /** The name of its band in the file of bands. */
    String band(boolean clean) {
        return switch (this) {
            case SINK -> DESCENT.band(clean);
            case LANDING -> "landing";
            case SURFACE_SPEED -> "servoTorque";
            default -> byKind ? json + (clean ? ".clean" : ".moved") : json;
        };
    }
}
