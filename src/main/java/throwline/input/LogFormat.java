package throwline.input;

import java.util.Locale;

/** Formats of logs, told by the ending of the file. */
enum LogFormat {
    /** Rows of cells under a header. */
    CELLS,
    /** Sentences of NMEA 0183. */
    NMEA,
    /** Records of the gliding commission's flight recorders. */
    IGC,
    /** Track points of GPX 1.1. */
    GPX;

    static LogFormat of(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return name.endsWith(".nmea") || name.endsWith(".nmea.txt")
                ? NMEA
                : name.endsWith(".igc") ? IGC : name.endsWith(".gpx") ? GPX : CELLS;
    }

    /** Whether columns must be told. */
    boolean hasColumns() {
        return this == CELLS;
    }
}
