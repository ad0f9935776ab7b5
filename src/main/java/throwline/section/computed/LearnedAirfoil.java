package throwline.section.computed;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import throwline.numerics.Interpolation;
import throwline.section.Airfoil;
import throwline.section.CurveReading;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * A measured airfoil as an example to learn from.
 *
 * @param name of the library
 * @param traits of its outline
 * @param measured its figures at each of {@link #REYNOLDS}
 */
public record LearnedAirfoil(String name, SectionTraits traits, Map<SectionFigure, double[]> measured) {

    /** Reynolds numbers at which most airfoils of the library were measured. */
    static final double[] REYNOLDS = {60_000, 100_000, 150_000, 200_000, 300_000};

    private static final double REFERENCE = 200_000;
    /** Share of most lift up to which drag is that of attached flow. */
    private static final double ATTACHED = 0.9;

    private static final int TRAITS = 7;
    private static final String NUMBER = "%.6f";

    public LearnedAirfoil {
        measured = Map.copyOf(measured);
    }

    static double log(double reynolds) {
        return Math.log(reynolds / REFERENCE);
    }

    /** What a measured airfoil teaches; empty where its outline is not known or bad. */
    public static Optional<LearnedAirfoil> of(Airfoil airfoil, SectionAerodynamics sections) {
        return airfoil.shape().flatMap(SectionTraits::of).map(traits -> {
            Map<SectionFigure, double[]> figures = new EnumMap<>(SectionFigure.class);
            for (SectionFigure figure : SectionFigure.values()) {
                figures.put(
                        figure,
                        Arrays.stream(REYNOLDS)
                                .map(reynolds -> read(
                                        figure,
                                        sections.curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds)))
                                .toArray());
            }
            return new LearnedAirfoil(airfoil.name(), traits, figures);
        });
    }

    static double read(SectionFigure figure, SectionCurve curve) {
        return switch (figure) {
            case ZERO_LIFT -> curve.zeroLiftAngle();
            case MAX_LIFT -> curve.maxLift();
            case STALL_ANGLE -> curve.stallAngle();
            case DRAG_LOW -> dragAt(curve, ComputedDrag.LIFTS[0]);
            case DRAG_MIDDLE -> dragAt(curve, ComputedDrag.LIFTS[1]);
            case DRAG_HIGH -> dragAt(curve, ComputedDrag.LIFTS[2]);
        };
    }

    /** Drag where lift rises through a value; none near and past the most lift. */
    private static double dragAt(SectionCurve curve, double lift) {
        if (lift > ATTACHED * curve.maxLift()) {
            return Double.NaN;
        }
        return CurveReading.dragAt(curve, lift);
    }

    double measured(SectionFigure figure, int reynolds) {
        return values(figure)[reynolds];
    }

    private double[] values(SectionFigure figure) {
        double[] values = measured.get(figure);
        if (values == null) {
            throw new IllegalStateException("not learned: " + figure);
        }
        return values;
    }

    /** One line of the table. */
    String line() {
        StringBuilder line = new StringBuilder(name);
        for (double trait : new double[] {
            traits.thickness(),
            traits.camber(),
            traits.edge(),
            traits.zeroLiftAngle(),
            traits.moment(),
            traits.peakLift(),
            traits.peakAngle()
        }) {
            line.append(',').append(String.format(Locale.ROOT, NUMBER, trait));
        }
        line.append(traits.drag());
        for (SectionFigure figure : SectionFigure.values()) {
            for (double value : values(figure)) {
                line.append(',').append(String.format(Locale.ROOT, NUMBER, value));
            }
        }
        return line.toString();
    }

    /** From such a line. */
    static LearnedAirfoil of(String line) {
        String[] cells = line.split(",", -1);
        double[] n =
                Arrays.stream(cells).skip(1).mapToDouble(Double::parseDouble).toArray();
        Map<SectionFigure, double[]> figures = new EnumMap<>(SectionFigure.class);
        ComputedDrag drag = ComputedDrag.of(Arrays.copyOfRange(n, TRAITS, TRAITS + ComputedDrag.COUNT));
        int at = TRAITS + ComputedDrag.COUNT;
        for (SectionFigure figure : SectionFigure.values()) {
            figures.put(figure, Arrays.copyOfRange(n, at, at + REYNOLDS.length));
            at += REYNOLDS.length;
        }
        return new LearnedAirfoil(cells[0], new SectionTraits(n[0], n[1], n[2], n[3], n[4], n[5], n[6], drag), figures);
    }

    /** A value between those at {@link #REYNOLDS}, held outside. */
    static double between(double[] values, double reynolds) {
        double[] logs = Arrays.stream(REYNOLDS).map(Math::log).toArray();
        return Interpolation.at(logs, values, Interpolation.clamp(Math.log(reynolds), logs[0], logs[logs.length - 1]));
    }
}
