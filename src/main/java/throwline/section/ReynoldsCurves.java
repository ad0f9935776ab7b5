package throwline.section;

import java.util.Arrays;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * Curves made once at rungs of Reynolds number and read between them. Curves change along straight lines in ln Re between
 * the Reynolds numbers at which anything was measured or a law bends; every one of those is a rung, and others between
 * keep what is left of curvature (drag is a power of Reynolds number) below a part in a thousand. Safe for several threads:
 * a rung made twice is the same.
 */
final class ReynoldsCurves implements CurveFamily {

    /**
     * Widest step in ln Re. The error of a straight line over a step h is h^2 / 8 times the second derivative: for drag
     * that falls with the power 1.5 of Reynolds number, as steeply as any measured below 100 000, seven parts in ten
     * thousand; for the usual power 0.5, one.
     */
    private static final double WIDEST = 0.05;

    /** Rungs nearer than this in ln Re are one. */
    private static final double CLOSEST = 1e-9;

    private final double[] rungs;
    private final DoubleFunction<TabulatedCurve> maker;
    private final @Nullable TabulatedCurve[] made;

    /**
     * @param bends Reynolds numbers at which something bends, at least one; nothing changes outside them
     * @param maker makes the curve at a Reynolds number
     */
    ReynoldsCurves(DoubleStream bends, DoubleFunction<TabulatedCurve> maker) {
        this.maker = maker;
        rungs = ladder(bends.map(Math::log).sorted().toArray());
        made = new TabulatedCurve[rungs.length];
    }

    private static double[] ladder(double[] bends) {
        DoubleStream.Builder all = DoubleStream.builder();
        all.add(bends[0]);
        double last = bends[0];
        for (double next : bends) {
            if (next - last > CLOSEST) {
                int steps = (int) Math.ceil((next - last) / WIDEST);
                for (int k = 1; k <= steps; k++) {
                    all.add(last + (next - last) * k / steps);
                }
                last = next;
            }
        }
        return all.build().toArray();
    }

    @Override
    public SectionCurve at(double reynolds) {
        double at = Math.log(reynolds);
        int last = rungs.length - 1;
        if (at <= rungs[0] || at >= rungs[last]) {
            return rung(at <= rungs[0] ? 0 : last);
        }
        int found = Arrays.binarySearch(rungs, at);
        if (found >= 0) {
            return rung(found);
        }
        int above = -found - 1;
        double share = (at - rungs[above - 1]) / (rungs[above] - rungs[above - 1]);
        return new CurveBetween(rung(above - 1), rung(above), share);
    }

    private TabulatedCurve rung(int i) {
        TabulatedCurve curve = made[i];
        if (curve == null) {
            curve = maker.apply(Math.exp(rungs[i]));
            made[i] = curve;
        }
        return curve;
    }
}
