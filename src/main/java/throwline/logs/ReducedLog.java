package throwline.logs;

import java.util.List;
import java.util.Optional;
import throwline.logs.Piece.Kind;

/**
 * Findings in a log.
 *
 * @param name of its file
 * @param dropped lines left out for a wrong checksum or a missing fix
 * @param wind found; empty where nothing tells it
 * @param bySensor true where airspeeds come from a sensor, false where from ground speed and wind
 * @param scale what the sensor showed over the airspeed by the circle; 1 where not known
 * @param scaleSd its standard deviation
 * @param scaleWrong true where the sensor is off by more than it may be, so that the circle alone is believed
 * @param dayFactor scatter of the glides over that of a calm day
 * @param heightScale share by which all heights may be off, one standard deviation
 * @param pieces used and rejected, in the order of time
 * @param drawn the channels that a chart shows
 */
public record ReducedLog(
        String name,
        int dropped,
        Optional<LogWind> wind,
        boolean bySensor,
        double scale,
        double scaleSd,
        boolean scaleWrong,
        double dayFactor,
        double heightScale,
        List<Piece> pieces,
        Drawn drawn) {

    public ReducedLog {
        pieces = List.copyOf(pieces);
    }

    /**
     * Channels over time; not a number where unknown.
     *
     * @param times s
     * @param heights m
     * @param groundSpeeds m/s
     * @param airspeeds m/s, the wind taken off
     */
    @SuppressWarnings("ArrayRecordComponent") // channels, never compared
    public record Drawn(double[] times, double[] heights, double[] groundSpeeds, double[] airspeeds) {}

    /** Used pieces of a kind with a set-up. */
    public List<Piece> used(Kind kind, String setUp) {
        return pieces.stream()
                .filter(p -> p.used() && p.kind() == kind && p.setUp().equals(setUp))
                .toList();
    }

    /** Used pieces of a kind. */
    public List<Piece> used(Kind kind) {
        return pieces.stream().filter(p -> p.used() && p.kind() == kind).toList();
    }

    /** Set-ups with a used piece, in the order in which they were flown. */
    public List<String> flown() {
        return pieces.stream()
                .filter(p -> p.used() && !p.setUp().isEmpty())
                .map(Piece::setUp)
                .distinct()
                .toList();
    }
}
