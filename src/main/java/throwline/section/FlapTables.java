package throwline.section;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import throwline.numerics.Interpolation;

/**
 * The handbook curves of a plain flap from the resource files {@code section/flap-*.csv}, which name their source.
 * Immutable.
 */
final class FlapTables {

    /** Up to this deflection down lift is in proportion to it. */
    private static final double LINEAR = Math.toRadians(12);

    /** A surface turned up lies in thinner air and follows the table this much later (practice). */
    private static final double LATER_UP = Math.toRadians(3);

    private final double[] chords;
    private final MonotoneCubic[] curves;
    private final double steepest;
    private final MonotoneCubic thickness;
    private final MonotoneCubic chord;

    private FlapTables(List<String[]> lift, List<String[]> maxLift) {
        String[] head = lift.get(0);
        chords = Arrays.stream(head).skip(1).mapToDouble(Double::parseDouble).toArray();
        double[] deflections = lift.stream()
                .skip(1)
                .mapToDouble(row -> Math.toRadians(Double.parseDouble(row[0])))
                .toArray();
        steepest = deflections[deflections.length - 1];
        curves = new MonotoneCubic[chords.length];
        for (int i = 0; i < chords.length; i++) {
            int column = i + 1;
            double[] factors = lift.stream()
                    .skip(1)
                    .mapToDouble(row -> Double.parseDouble(row[column]))
                    .toArray();
            curves[i] = effective(deflections, factors);
        }
        thickness = curve(maxLift, "B");
        chord = curve(maxLift, "k1");
    }

    static FlapTables load() {
        return new FlapTables(rows("flap-lift-factor.csv"), rows("flap-max-lift.csv"));
    }

    private static List<String[]> rows(String name) {
        try (InputStream in = FlapTables.class.getResourceAsStream("/throwline/section/" + name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the jar: " + name);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MonotoneCubic curve(List<String[]> rows, String kind) {
        List<String[]> wanted = rows.stream().filter(row -> row[0].equals(kind)).toList();
        return MonotoneCubic.through(
                wanted.stream().mapToDouble(row -> Double.parseDouble(row[1])).toArray(),
                wanted.stream().mapToDouble(row -> Double.parseDouble(row[2])).toArray());
    }

    /** Factor times deflection over deflection: it never falls, the factor does. */
    private static MonotoneCubic effective(double[] deflections, double[] factors) {
        int n = deflections.length;
        double[] x = new double[n + 3];
        double[] y = new double[n + 3];
        x[1] = LINEAR / 2;
        y[1] = LINEAR / 2;
        x[2] = LINEAR;
        y[2] = LINEAR;
        for (int i = 0; i < n; i++) {
            x[i + 3] = deflections[i];
            y[i + 3] = factors[i] * deflections[i];
        }
        return MonotoneCubic.through(x, y);
    }

    /**
     * Deflection times the large-deflection factor K, rad, with the deflection's sign; level beyond 60 degrees.
     *
     * @param deflection rad
     * @param chordFraction clamped to 0.10 to 0.50
     */
    double effectiveDeflection(double deflection, double chordFraction) {
        double size = Math.min(Math.abs(deflection), steepest);
        double later = deflection < 0 ? LATER_UP : 0;
        if (size <= LINEAR + later) {
            return deflection;
        }
        double at = Interpolation.clamp(chordFraction, chords[0], chords[chords.length - 1]);
        int i = Interpolation.interval(chords, at);
        double share = (at - chords[i]) / (chords[i + 1] - chords[i]);
        double read = size - later;
        double value = Interpolation.between(curves[i].value(read), curves[i + 1].value(read), share);
        return Math.copySign(value / read * size, deflection);
    }

    /**
     * Maximum-lift increment at a high Reynolds number, with the deflection's sign.
     *
     * @param deflection rad; level beyond 60 degrees
     * @param chordFraction level beyond 0.35
     * @param thicknessRatio clamped to 0.08 to 0.18
     */
    double maxLiftRise(double deflection, double chordFraction, double thicknessRatio) {
        double size = Math.min(Math.abs(deflection), steepest);
        double rise = chord.value(chordFraction) * Math.sin(1.5 * size) * thickness.value(thicknessRatio);
        return Math.copySign(rise, deflection);
    }
}
