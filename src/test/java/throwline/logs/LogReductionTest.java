package throwline.logs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.LoggedText;
import throwline.logs.Piece.Kind;
import throwline.logs.SyntheticLog.Fault;
import throwline.logs.SyntheticLog.First;
import throwline.logs.SyntheticLog.Setting;

/** Reduction of synthetic logs whose truth is known: nothing is shifted by more than the noise of many flights. */
class LogReductionTest {

    private static final int SEEDS = Integer.getInteger("throwline.logs", 60);
    private static final List<String> SET_UPS = List.of("clean", "airbrake");

    private static final SyntheticLog.Aeroplane PLANE = new SyntheticLog.Aeroplane() {
        @Override
        public double stallSpeed(String setUp) {
            return setUp.equals("clean") ? 9.08 : 8.84;
        }

        @Override
        public double descentAngle(String setUp, double speed) {
            double lift = 3.05 * 9.80665 / (1.17 * speed * speed * 0.492 / 2);
            double drag = (setUp.equals("clean") ? 0.0545 : 0.1813) + 0.0617 * lift * lift;
            return Math.atan(drag / lift);
        }

        @Override
        public double elevator(String setUp, double speed) {
            return Math.toRadians(setUp.equals("clean") ? -3.57 : 6.3);
        }

        @Override
        public double rollRate(String setUp, double speed) {
            return Math.toRadians(7 * speed);
        }
    };

    private static final LogAir AIR = new LogAir(OptionalDouble.of(288.15), 101_325, 0, true);

    static ReducedLog reduce(SyntheticLog synthetic, Setting setting, List<Integer> out) {
        FlightLog log = LoggedText.read(synthetic.fly(SET_UPS), setting.sensor(), SET_UPS);
        Map<String, StallGuide> guides = new HashMap<>();
        SET_UPS.forEach(s -> guides.put(
                s, new StallGuide(PLANE.stallSpeed(s) * 1.03, PLANE.descentAngle(s, 1.05 * PLANE.stallSpeed(s)))));
        return new LogReduction(log, AIR, guides, setting.lag(), out).reduced();
    }

    /** Sums over seeds. */
    private static final class Sums {
        private final List<Double> stalls = new ArrayList<>();
        private final List<Double> sinks = new ArrayList<>();
        private final List<Double> winds = new ArrayList<>();
        private final Map<Kind, Integer> counts = new HashMap<>();
        private int rejected;

        void take(SyntheticLog synthetic, ReducedLog reduced) {
            for (Piece piece : reduced.pieces()) {
                if (piece.used()) {
                    counts.merge(piece.kind(), 1, Integer::sum);
                } else {
                    rejected++;
                }
                if (piece.used() && piece.kind() == Kind.STALL) {
                    stalls.add(piece.value() - PLANE.stallSpeed(piece.setUp()));
                }
            }
            for (String setUp : SET_UPS) {
                for (Piece glide : reduced.used(Kind.GLIDE, setUp)) {
                    double v = glide.speed();
                    sinks.add(glide.value() - v * Math.sin(PLANE.descentAngle(setUp, v)));
                }
            }
            reduced.wind().ifPresent(wind -> {
                double[] truth = synthetic.wind(60);
                winds.add(wind.east() * wind.factor(60) - truth[0]);
                winds.add(wind.north() * wind.factor(60) - truth[1]);
            });
        }

        static double mean(List<Double> values) {
            return values.stream().mapToDouble(v -> v).average().orElse(Double.NaN);
        }

        static double sd(List<Double> values) {
            double mean = mean(values);
            return Math.sqrt(values.stream()
                    .mapToDouble(v -> (v - mean) * (v - mean))
                    .average()
                    .orElse(Double.NaN));
        }

        @Override
        public String toString() {
            return counts + " rejected " + rejected + " of " + SEEDS + " logs; stall " + mean(stalls) + " sd "
                    + sd(stalls) + "; sink " + mean(sinks) + " sd " + sd(sinks) + "; wind " + mean(winds) + " sd "
                    + sd(winds);
        }
    }

    /** 24 stalls less 6, 8 glides a log; limits: stall 0.1 m/s, sink 0.03 m/s, wind 0.35 m/s. */
    @ParameterizedTest
    @CsvSource({
        "5, true, 1, 0.4, false",
        "10, true, 1, 0.4, false",
        "5, false, 1, 0.4, false",
        "5, false, 1, 0.4, true",
        "5, false, 1, 0.8, false",
        "2, false, 1, 0.4, false",
        "5, true, 1.18, 0.4, false",
        "1, false, 1, 0.4, false"
    })
    void shifts_nothing(double rate, boolean sensor, double scale, double lag, boolean gaps) {
        Setting setting = new Setting(rate, sensor, scale, lag, gaps, First.CIRCLES, Fault.NONE);
        Sums sums = new Sums();
        for (int seed = 0; seed < SEEDS; seed++) {
            SyntheticLog synthetic = new SyntheticLog(PLANE, setting, 1000 + seed);
            sums.take(synthetic, reduce(synthetic, setting, List.of()));
        }
        assertThat(Math.abs(Sums.mean(sums.sinks))).as(sums.toString()).isLessThan(0.03);
        assertThat(Sums.sd(sums.winds)).as(sums.toString()).isLessThan(0.35);
        if (rate >= 2) {
            assertThat(Math.abs(Sums.mean(sums.stalls))).as(sums.toString()).isLessThan(0.1);
        } else {
            assertThat(sums.stalls).isEmpty();
        }
    }

    /** Without circles glides to and fro tell the wind along them: half the difference of their ground speeds. */
    @Test
    void finds_the_wind_without_circles() {
        Setting setting = new Setting(5, false, 1, 0.4, false, First.NOTHING, Fault.NONE);
        int found = 0;
        double sum = 0;
        for (int seed = 0; seed < 20; seed++) {
            SyntheticLog synthetic = new SyntheticLog(PLANE, setting, 300 + seed);
            ReducedLog reduced = reduce(synthetic, setting, List.of());
            assertThat(reduced.used(Kind.CIRCLE)).isEmpty();
            if (reduced.wind().isPresent()) {
                LogWind wind = reduced.wind().get();
                double[] truth = synthetic.wind(wind.height());
                found++;
                sum += Math.pow(Math.hypot(wind.east() - truth[0], wind.north() - truth[1]), 2);
                assertThat(reduced.used(Kind.GLIDE)).isNotEmpty();
            }
        }
        assertThat(found).isGreaterThan(15);
        assertThat(Math.sqrt(sum / found)).isLessThan(1);
    }

    /** Three headings tell the wind as a circle does: by the ground velocities whose ends lie on one circle. */
    @Test
    void finds_the_wind_by_three_headings() {
        Setting setting = new Setting(5, false, 1, 0.4, false, First.THREE_HEADINGS, Fault.NONE);
        Sums sums = new Sums();
        for (int seed = 0; seed < SEEDS; seed++) {
            SyntheticLog synthetic = new SyntheticLog(PLANE, setting, 2000 + seed);
            ReducedLog reduced = reduce(synthetic, setting, List.of());
            assertThat(reduced.used(Kind.CIRCLE)).isEmpty();
            sums.take(synthetic, reduced);
        }
        assertThat(Math.abs(Sums.mean(sums.sinks))).as(sums.toString()).isLessThan(0.03);
        assertThat(Math.abs(Sums.mean(sums.stalls))).as(sums.toString()).isLessThan(0.1);
        assertThat(Sums.sd(sums.winds)).as(sums.toString()).isLessThan(0.35);
    }

    /** Numbers stay when pieces are struck out; a struck circle takes the wind with it. */
    @Test
    void strikes_out_pieces() {
        SyntheticLog.Aeroplane plane = PLANE;
        ReducedLog all = reduce(new SyntheticLog(plane, Setting.GPS_ONLY, 5), Setting.GPS_ONLY, List.of());
        Piece glide = all.used(Kind.GLIDE).get(1);
        Piece circle = all.used(Kind.CIRCLE).get(0);
        ReducedLog less =
                reduce(new SyntheticLog(plane, Setting.GPS_ONLY, 5), Setting.GPS_ONLY, List.of(glide.number()));
        assertThat(less.used(Kind.GLIDE)).hasSize(all.used(Kind.GLIDE).size() - 1);
        assertThat(less.pieces().stream()
                        .filter(p -> p.number() == glide.number())
                        .findFirst()
                        .orElseThrow()
                        .reason())
                .isEqualTo(Piece.Reason.STRUCK_OUT);
        ReducedLog straight =
                reduce(new SyntheticLog(plane, Setting.GPS_ONLY, 5), Setting.GPS_ONLY, List.of(circle.number()));
        assertThat(straight.used(Kind.CIRCLE)).isEmpty();
        assertThat(straight.wind().map(LogWind::source)).isNotEqualTo(all.wind().map(LogWind::source));
    }

    /** Five seconds are too short, and nothing else is made of them. */
    @Test
    void rejects_what_is_too_short() {
        StringBuilder text = new StringBuilder(
                "seconds,height baro m,ground speed m/s,course deg,airspeed m/s,throttle %,elevator deg,aileron %,switch,roll deg/s\n");
        for (int i = 0; i < 200; i++) {
            boolean glides = i > 50 && i < 80;
            text.append(String.format(
                    java.util.Locale.ROOT,
                    "%.1f,%.1f,12,90,12,%d,0,0,0,0%n",
                    i / 5.0,
                    80 - (glides ? i - 50 : 0) * 0.3,
                    glides ? 0 : 60));
        }
        FlightLog log = LoggedText.read(text.toString(), true, SET_UPS);
        ReducedLog reduced = new LogReduction(log, AIR, Map.of(), 0.4, List.of()).reduced();
        assertThat(reduced.used(Kind.GLIDE)).isEmpty();
        assertThat(reduced.pieces()).anyMatch(p -> p.reason() == Piece.Reason.TOO_SHORT);
    }
}
