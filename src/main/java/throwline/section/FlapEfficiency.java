package throwline.section;

import java.util.stream.DoubleStream;
import throwline.numerics.Interpolation;

/**
 * Share of its thin-airfoil effectiveness that a small, closed surface keeps in a real boundary layer, by thickness,
 * camber and Reynolds number: straight in ln Re between the values below, straight between the kinds of section.
 *
 * <ul>
 *   <li>Flat or sharp, up to 5 % thick: 0.90 at 60 000, 0.91 at 100 000, 0.92 from 150 000 on. The bubble behind the nose
 *       makes the boundary layer turbulent, so that nothing changes with Reynolds number (Winslow and others, J. Aircraft,
 *       doi 10.2514/1.C034415, abstract, read); the level is a plate's own lift slope over 2 pi at Re 100 000 (0.907,
 *       computed from read data). A surface on a plate was not measured: within 0.10.
 *   <li>Symmetric and rounded, 7 to 10 % thick: 0.85 at 100 000, 0.88 at 150 000, 0.90 from 250 000 on; 0.944 between 104 000
 *       and 240 000 is the NACA 0009 tail of a complete model (Texas A&amp;M tunnel, test 1620, runs 16 and 18, computed from
 *       read data); the level is that of NACA TR 721 (0.82 to 0.89 from memory). 0.78 at 60 000 goes on from there
 *       (practice). Within 0.12, and as much as 30 % less within 4 degrees of neutral below 100 000, where long bubbles leave
 *       a dead band.
 *   <li>Cambered: 0.65 at 60 000 (practice), 0.77 at 100 000, 0.90 from 150 000 on, from one glider section (E214C polars of
 *       Selig, Donovan and Fraser, computed). Within 0.15. Symmetric sections of 13 % and more lie half way between.
 * </ul>
 */
final class FlapEfficiency {

    private static final double[] REYNOLDS = {60_000, 100_000, 150_000, 250_000};
    private static final double[] FLAT = {0.90, 0.91, 0.92, 0.92};
    private static final double[] ROUNDED = {0.78, 0.85, 0.88, 0.90};
    private static final double[] CAMBERED = {0.65, 0.77, 0.90, 0.90};

    private static final double FLAT_TO = 0.05;
    private static final double ROUNDED_FROM = 0.07;
    private static final double ROUNDED_TO = 0.10;
    private static final double THICK_FROM = 0.13;

    /** Camber over chord up to which a section is symmetric, and from which it is cambered. */
    private static final double SYMMETRIC_TO = 0.005;

    private static final double CAMBERED_FROM = 0.015;

    private FlapEfficiency() {}

    /** Reynolds numbers at which the laws bend. */
    static DoubleStream bends() {
        return DoubleStream.of(REYNOLDS);
    }

    /**
     * The share; level outside 60 000 and 250 000.
     *
     * @param thickness thickness over chord
     * @param camber largest camber over chord
     * @param reynolds Reynolds number
     */
    static double of(double thickness, double camber, double reynolds) {
        double cambered = at(CAMBERED, reynolds);
        double rounded = at(ROUNDED, reynolds);
        double thick = 0.5 * share(thickness, ROUNDED_TO, THICK_FROM);
        double symmetric = thickness < ROUNDED_TO
                ? between(at(FLAT, reynolds), rounded, share(thickness, FLAT_TO, ROUNDED_FROM))
                : between(rounded, cambered, thick);
        return between(symmetric, cambered, share(Math.abs(camber), SYMMETRIC_TO, CAMBERED_FROM));
    }

    private static double at(double[] values, double reynolds) {
        int i = 0;
        while (i < REYNOLDS.length - 2 && REYNOLDS[i + 1] < reynolds) {
            i++;
        }
        double share = share(Math.log(reynolds), Math.log(REYNOLDS[i]), Math.log(REYNOLDS[i + 1]));
        return between(values[i], values[i + 1], share);
    }

    private static double share(double value, double from, double to) {
        return Interpolation.clamp((value - from) / (to - from), 0, 1);
    }

    private static double between(double first, double second, double share) {
        return first + share * (second - first);
    }
}
