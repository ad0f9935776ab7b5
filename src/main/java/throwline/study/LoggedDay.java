package throwline.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import throwline.air.Air;
import throwline.correction.LoggedReadings;
import throwline.correction.NotedReadings;
import throwline.logs.FlightLog;
import throwline.logs.LogAir;
import throwline.logs.LogReduction;
import throwline.logs.Piece;
import throwline.logs.Piece.Kind;
import throwline.logs.ReducedLog;
import throwline.logs.StallGuide;
import throwline.model.Field;
import throwline.model.Model;
import throwline.notes.FlownDay;
import throwline.notes.LogSource;

/**
 * A day with its log.
 *
 * @param day its notes
 * @param log what was found
 */
public record LoggedDay(FlownDay day, ReducedLog log) {

    /** Usual lag of a receiver's speed, s (PRACTICE). */
    private static final double LAG = 0.4;

    /** A guide needs the path just above the stall. */
    private static final double ABOVE = 1.05;

    static LoggedDay of(FlownDay day, FlightLog log, NotedReadings.Fleet fleet, Model model) {
        double thinner = NotedReadings.density(day, model.field());
        Map<String, StallGuide> guides = new HashMap<>();
        for (String setUp : log.setUps()) {
            fleet.flying(day, setUp).ifPresent(flying -> {
                double stall = flying.predicted().stallSpeed();
                guides.put(
                        setUp,
                        new StallGuide(
                                stall * Math.exp(-thinner / 2),
                                flying.predicted().descentAngle(ABOVE * stall, 1)));
            });
        }
        double lag = day.log()
                .map(LogSource::lags)
                .map(l -> l.getOrDefault("ground speed", LAG))
                .orElse(LAG);
        List<Integer> out = day.log().map(LogSource::struckOut).orElse(List.of());
        return new LoggedDay(day, new LogReduction(log, air(day, model.field()), guides, lag, out).reduced());
    }

    private static LogAir air(FlownDay day, Field field) {
        OptionalDouble temperature =
                day.air().temperature().isPresent() ? day.air().temperature() : field.temperature();
        double height = day.air().heightAboveSea().orElse(field.heightAboveSea());
        double pressure =
                day.air().pressure().orElse(Air.at(height, temperature).pressure());
        boolean corrected = day.log().map(LogSource::temperatureCorrected).orElse(false);
        return new LogAir(temperature, pressure, height, corrected);
    }

    /** What its set-ups were flown for. */
    List<FlownFor> flown() {
        List<FlownFor> flown = new ArrayList<>();
        for (String setUp : log.flown()) {
            add(flown, Kind.STALL, setUp, FlownFor.Topic.STALL);
            add(flown, Kind.GLIDE, setUp, FlownFor.Topic.GLIDE);
            add(flown, Kind.ROLL, setUp, FlownFor.Topic.ROLL);
            if (log.used(Kind.GLIDE, setUp).stream().anyMatch(p -> !Double.isNaN(p.elevator()))) {
                String source = "elevator " + LoggedReadings.source(Kind.GLIDE, setUp, day);
                flown.add(new FlownFor(setUp, FlownFor.Topic.TRIM, source));
            }
        }
        return flown;
    }

    private void add(List<FlownFor> flown, Kind kind, String setUp, FlownFor.Topic topic) {
        if (!log.used(kind, setUp).isEmpty()) {
            flown.add(new FlownFor(setUp, topic, LoggedReadings.source(kind, setUp, day)));
        }
    }

    /** Pieces, used and rejected. */
    public List<Piece> pieces() {
        return log.pieces();
    }
}
