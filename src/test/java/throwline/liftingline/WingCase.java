package throwline.liftingline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import throwline.section.SectionCurve;

/**
 * One row of the table of check values: a wing of theory, a condition and the quantity to look at.
 *
 * @param planform its shape
 * @param surfaces what is hinged, places over half the span
 * @param law lift law of the unmoved section
 * @param height over the span, infinite for free air
 * @param condition what is held: incidence in degrees or lift coefficient
 */
record WingCase(
        TheoryPlanform planform, List<Flap> surfaces, String law, double height, String condition, double held) {

    /** Strips over the whole span in every case. */
    static final int STRIPS = 80;

    /** A surface with its shifts of the zero-lift angle, rad. */
    record Flap(double inner, double outer, double left, double right) {}

    static WingCase read(
            String wing,
            double aspect,
            double taper,
            String twist,
            String surfaces,
            String law,
            double height,
            String condition) {
        TheoryPlanform flat =
                wing.equals("ellipse") ? TheoryPlanform.ellipse(aspect) : TheoryPlanform.tapered(aspect, taper);
        List<Flap> flaps = new ArrayList<>();
        for (String text : surfaces.isEmpty() ? new String[0] : surfaces.split(";", -1)) {
            double[] n = Arrays.stream(text.split(":", -1))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            flaps.add(new Flap(n[0], n[1], Math.toRadians(n[2]), Math.toRadians(n[3])));
        }
        String[] what = condition.split(" ", -1);
        return new WingCase(
                flat.twisted(twistLaw(twist, aspect)), flaps, law, height, what[0], Double.parseDouble(what[1]));
    }

    /**
     * Linear twist, or the twist that makes a rectangular wing with section slope 2 pi carry a load at lift coefficient
     * 0.5: angle = sum of A_n (4 AR / a0 sin(n t) + n sin(n t) / sin(t)), with A3 = 0 or -A1/3.
     */
    private static DoubleUnaryOperator twistLaw(String twist, double aspect) {
        double a1 = 0.5 / (Math.PI * aspect);
        double strip = 4 * aspect / (2 * Math.PI);
        return switch (twist) {
            case "elliptic load" -> y -> a1 * (1 + strip * Math.sqrt(1 - y * y));
            case "bell load" -> y -> a1 * (strip * 4.0 / 3 * Math.pow(1 - y * y, 1.5) + 4 * (1 - y * y) - 2);
            default -> y -> Math.toRadians(Double.parseDouble(twist)) * y;
        };
    }

    /** The wing of this row. */
    TheoryWing wing() {
        return wing(STRIPS);
    }

    /** The wing of this row with another number of strips. */
    TheoryWing wing(int strips) {
        return wing(planform, surfaces, Ground.none(), strips);
    }

    /** The same without its surfaces. */
    TheoryWing clean() {
        return wing(planform, List.of(), Ground.none());
    }

    /** The same with one surface over the whole span, shifted as the first surface on the right. */
    TheoryWing flappedOverTheSpan() {
        double shift = surfaces.get(0).right();
        return wing(planform, List.of(new Flap(0, 1, shift, shift)), Ground.none());
    }

    /** The same without twist. */
    TheoryWing flat() {
        return wing(planform.twisted(0), surfaces, Ground.none());
    }

    /** The same with another taper. */
    TheoryWing tapered(double taper) {
        return wing(TheoryPlanform.tapered(planform.aspect(), taper), surfaces, Ground.none());
    }

    /** The same near the ground, trailing images only. */
    TheoryWing nearTheGround() {
        return wing(planform, surfaces, new Ground(height * 2, false));
    }

    private TheoryWing wing(TheoryPlanform shape, List<Flap> flaps, Ground ground) {
        return wing(shape, flaps, ground, STRIPS);
    }

    private TheoryWing wing(TheoryPlanform shape, List<Flap> flaps, Ground ground, int strips) {
        double[] ends = flaps.stream()
                .flatMapToDouble(f -> Arrays.stream(new double[] {f.inner(), f.outer()}))
                .toArray();
        DoubleFunction<SectionCurve> section = y -> section(flaps, y);
        return new TheoryWing(shape, ends, strips, section, ground, g -> ChordCorrection.none());
    }

    private SectionCurve section(List<Flap> flaps, double y) {
        double distance = Math.abs(y);
        double shift = 0;
        double moment = 0;
        for (Flap flap : flaps) {
            if (distance > flap.inner() && distance < flap.outer()) {
                shift = y < 0 ? flap.left() : flap.right();
                moment = law.startsWith("moment") ? lawNumber() : 0;
            }
        }
        return law.startsWith("tanh") ? LawCurve.tanh(lawNumber()) : LawCurve.linear(shift, moment);
    }

    private double lawNumber() {
        return Double.parseDouble(law.split(" ", -1)[1]);
    }

    /** Incidence of the row's condition on a wing, rad. */
    double incidence(TheoryWing wing) {
        return condition.equals("lift") ? wing.incidenceFor(held) : Math.toRadians(held);
    }
}
