package throwline.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import throwline.logs.Piece.Kind;
import throwline.logs.Piece.Reason;
import throwline.logs.WindSearch.Circled;

/** Reduction of one log to pieces with numbers. Methods manual 22. */
public final class LogReduction {

    /** An airspeed sensor that was not checked (PRACTICE), and how far off makes it wrong, in standard deviations. */
    public static final double SENSOR_SCALE = 0.04;

    private static final double SENSOR_WRONG = 2.5;

    /** Sink of one glide of ten seconds on a calm day, m/s, and how many glides that is worth (PRACTICE). */
    public static final double GLIDE = 0.28;

    private static final double WORTH = 4;
    private static final double CALMEST = 0.49;
    private static final double TEN = 10;

    private final FlightLog log;
    private final LogAir air;
    private final Map<String, StallGuide> guides;
    private final double groundLag;
    private final Set<Integer> struckOut;
    private final Trace trace;
    private final WindSearch winds;

    /**
     * @param log as written
     * @param air of the day
     * @param guides where stalls are looked for, by set-up
     * @param groundLag how far the ground speed is behind, s
     * @param struckOut numbers of pieces that do not count
     */
    public LogReduction(
            FlightLog log, LogAir air, Map<String, StallGuide> guides, double groundLag, List<Integer> struckOut) {
        this.log = log;
        this.air = air;
        this.guides = Map.copyOf(guides);
        this.groundLag = groundLag;
        this.struckOut = new HashSet<>(struckOut);
        trace = new Trace(log, air);
        winds = new WindSearch(trace, groundLag);
    }

    /** What is found. Numbers of pieces do not depend on what was struck out. */
    public ReducedLog reduced() {
        List<Circled> circles = winds.circles();
        ReducedLog all = reduced(circles, numbered -> false);
        boolean circleOut =
                all.pieces().stream().anyMatch(p -> p.kind() == Kind.CIRCLE && struckOut.contains(p.number()));
        if (struckOut.isEmpty() || !circleOut) {
            return struck(all, all.pieces());
        }
        Set<Double> starts = new HashSet<>();
        all.pieces().stream()
                .filter(p -> p.kind() == Kind.CIRCLE && struckOut.contains(p.number()))
                .forEach(p -> starts.add(p.from()));
        ReducedLog without =
                reduced(circles, circle -> starts.contains(circle.piece().from()));
        return struck(without, renumbered(without.pieces(), all.pieces()));
    }

    private interface Out {
        boolean test(Circled circle);
    }

    private ReducedLog reduced(List<Circled> circles, Out out) {
        Optional<LogWind> wind = winds.byCircles(circles, c -> !out.test(c)).or(winds::byRuns);
        Scale scale = scale(circles, out);
        Airspeeds speeds = new Airspeeds(trace, wind, scale.factor);
        List<Piece> found = new ArrayList<>(circles.stream().map(Circled::piece).toList());
        double lag = speeds.bySensor ? 0 : groundLag;
        List<Piece> stalls = new LoggedStalls(trace, speeds, guides, lag).all();
        found.addAll(stalls);
        List<Piece> broken =
                stalls.stream().filter(p -> p.reason() != Reason.NO_BREAK).toList();
        found.addAll(new GlideSearch(trace, speeds, wind.isPresent(), broken).all());
        found.addAll(new RollSearch(trace, speeds).all());
        found.sort(Comparator.comparingDouble(Piece::from).thenComparing(Piece::kind));
        List<Piece> numbered = new ArrayList<>();
        found.forEach(piece -> numbered.add(piece.numbered(numbered.size() + 1)));
        return result(wind, speeds, scale, numbered);
    }

    private ReducedLog result(Optional<LogWind> wind, Airspeeds speeds, Scale scale, List<Piece> pieces) {
        int n = trace.grid.size();
        double[] over = new double[n];
        Arrays.setAll(over, i -> Math.hypot(trace.east[i], trace.north[i]));
        ReducedLog.Drawn drawn = new ReducedLog.Drawn(trace.grid.times(), trace.height, over, speeds.speed);
        return new ReducedLog(
                log.name(),
                log.dropped(),
                wind,
                speeds.bySensor,
                scale.factor,
                scale.sd,
                scale.wrong,
                dayFactor(pieces),
                air.heightScale(),
                pieces,
                drawn);
    }

    private ReducedLog struck(ReducedLog found, List<Piece> pieces) {
        List<Piece> wanted = pieces.stream()
                .map(p -> struckOut.contains(p.number()) ? p.because(Reason.STRUCK_OUT) : p)
                .toList();
        double wind = found.wind().map(LogWind::speed).orElse(0.0);
        List<Piece> kept = new StallSpread(found.bySensor(), wind).checked(wanted);
        return new ReducedLog(
                found.name(),
                found.dropped(),
                found.wind(),
                found.bySensor(),
                found.scale(),
                found.scaleSd(),
                found.scaleWrong(),
                dayFactor(kept),
                found.heightScale(),
                kept,
                found.drawn());
    }

    /** A piece keeps the number of the one of its kind that it overlaps. */
    private static List<Piece> renumbered(List<Piece> pieces, List<Piece> before) {
        List<Piece> renumbered = new ArrayList<>();
        int next = before.size() + 1;
        for (Piece piece : pieces) {
            Optional<Piece> twin = before.stream()
                    .filter(b -> b.kind() == piece.kind() && b.from() < piece.to() && piece.from() < b.to())
                    .findFirst();
            renumbered.add(piece.numbered(twin.isPresent() ? twin.get().number() : next++));
        }
        return renumbered;
    }

    private record Scale(double factor, double sd, boolean wrong) {}

    /** What the sensor shows over what the circles have; with a scale that may be off by four per cent before. */
    private Scale scale(List<Circled> circles, Out out) {
        double sum = 0;
        double weight = 0;
        for (Circled circle : circles) {
            Piece piece = circle.piece();
            double shown = meanSensor(piece);
            if (piece.used() && !out.test(circle) && !Double.isNaN(shown)) {
                sum += circle.turned() * shown / piece.speed();
                weight += circle.turned();
            }
        }
        if (weight == 0) {
            return new Scale(1, SENSOR_SCALE, false);
        }
        double k = sum / weight;
        double sd = 0.02;
        if (Math.abs(k - 1) > SENSOR_WRONG * Math.hypot(sd, SENSOR_SCALE)) {
            return new Scale(k, sd, true);
        }
        double share = SENSOR_SCALE * SENSOR_SCALE / (SENSOR_SCALE * SENSOR_SCALE + sd * sd);
        return new Scale(1 + share * (k - 1), sd * Math.sqrt(share), false);
    }

    private double meanSensor(Piece piece) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < trace.grid.size(); i++) {
            if (trace.time(i) >= piece.from() && trace.time(i) <= piece.to() && !Double.isNaN(trace.sensor[i])) {
                sum += trace.sensor[i];
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Scatter of the glides over that of a calm day, with four glides' worth of a calm day before (scaled inverse chi-squared). */
    private static double dayFactor(List<Piece> pieces) {
        double squares = WORTH;
        double freedom = WORTH;
        List<Piece> glides =
                pieces.stream().filter(p -> p.used() && p.kind() == Kind.GLIDE).toList();
        for (String setUp : glides.stream().map(Piece::setUp).distinct().toList()) {
            List<Piece> same =
                    glides.stream().filter(p -> p.setUp().equals(setUp)).toList();
            double sum = same.stream().mapToDouble(Piece::length).sum();
            double mean = same.stream().mapToDouble(p -> p.value() * p.length()).sum() / sum;
            for (Piece glide : same) {
                squares += Math.pow((glide.value() - mean) / sinkSd(glide.length()), 2);
            }
            freedom += same.size() - 1;
        }
        return Math.sqrt(Math.max(CALMEST, squares / freedom));
    }

    /** Standard deviation of the sink of a glide of so many seconds on a calm day, m/s. */
    public static double sinkSd(double seconds) {
        return GLIDE * Math.sqrt(TEN / seconds);
    }
}
