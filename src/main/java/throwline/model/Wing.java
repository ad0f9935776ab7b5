package throwline.model;

import java.util.List;
import java.util.Optional;

/**
 * The wing, described from the middle to the right tip; the left side mirrors it.
 *
 * @param height quarter chord at the middle above the balance point, m; negative for a low wing
 * @param incidence root chord against the body's axis, rad, nose up positive
 * @param dihedral rise of each half, rad
 * @param sections from the middle to the tip, at least two, straight between
 * @param surfaces hinged surfaces of one side, not overlapping
 */
public record Wing(
        double height, double incidence, double dihedral, List<WingSection> sections, List<Surface> surfaces) {

    /**
     * Largest sweep of the quarter-chord line of any panel, forwards or backwards, rad: 15 degrees. Up to there the
     * lifting line treats sweep by simple sweep theory; beyond, its straight line no longer stands for the wing, and a
     * model is refused where it is read.
     */
    public static final double LARGEST_SWEEP = Math.toRadians(15);

    public Wing {
        sections = List.copyOf(sections);
        surfaces = List.copyOf(surfaces);
        if (sections.size() < 2) {
            throw new IllegalArgumentException("a wing needs a section at the middle and one at the tip");
        }
    }

    /** Half the span, m. */
    public double semiSpan() {
        return sections.get(sections.size() - 1).at();
    }

    /** Span, m. */
    public double span() {
        return 2 * semiSpan();
    }

    /** Area of both sides, m^2, carried through the body. */
    public double area() {
        double area = 0;
        for (int i = 1; i < sections.size(); i++) {
            WingSection inner = sections.get(i - 1);
            WingSection outer = sections.get(i);
            area += (outer.at() - inner.at()) * (inner.chord() + outer.chord());
        }
        return area;
    }

    /** Mean aerodynamic chord, m: the integral of chord squared over the area. */
    public double meanAerodynamicChord() {
        double integral = 0;
        for (int i = 1; i < sections.size(); i++) {
            double a = sections.get(i - 1).chord();
            double b = sections.get(i).chord();
            integral += (sections.get(i).at() - sections.get(i - 1).at()) * (a * a + a * b + b * b) * 2 / 3;
        }
        return integral / area();
    }

    /** Leading edge of the mean aerodynamic chord behind the leading edge at the middle, m. */
    public double meanLeadingEdge() {
        double integral = 0;
        for (int i = 1; i < sections.size(); i++) {
            WingSection inner = sections.get(i - 1);
            WingSection outer = sections.get(i);
            double chord = outer.chord() - inner.chord();
            double setBack = outer.setBack() - inner.setBack();
            double mean = inner.setBack() * inner.chord()
                    + (inner.setBack() * chord + setBack * inner.chord()) / 2
                    + setBack * chord / 3;
            integral += 2 * (outer.at() - inner.at()) * mean;
        }
        return integral / area();
    }

    /**
     * Chord at a distance from the middle.
     *
     * @param y distance from the middle, either side, m; beyond the tip the tip's chord holds
     * @return chord, m
     */
    public double chordAt(double y) {
        return between(y, true);
    }

    /** Chord of a surface behind its hinge at its root end, where throws are measured, m. */
    public double throwChord(Surface surface) {
        return chordAt(surface.from()) * surface.chordFraction();
    }

    /** The surface of this name. */
    public Optional<Surface> surface(String name) {
        return surfaces.stream().filter(surface -> surface.name().equals(name)).findFirst();
    }

    /**
     * Leading edge behind the leading edge at the middle.
     *
     * @param y distance from the middle, either side, m
     * @return distance, m, backwards positive
     */
    public double leadingEdgeAt(double y) {
        return between(y, false);
    }

    /**
     * Sweep of the quarter-chord line of a panel.
     *
     * @param panel number of the panel from the middle, 0 to one less than the sections' intervals
     * @return rad, backwards positive
     */
    public double sweepOfPanel(int panel) {
        WingSection inner = sections.get(panel);
        WingSection outer = sections.get(panel + 1);
        double back = outer.setBack() - inner.setBack() + (outer.chord() - inner.chord()) / 4;
        return Math.atan2(back, outer.at() - inner.at());
    }

    private double between(double y, boolean chord) {
        double distance = Math.abs(y);
        for (int i = 1; i < sections.size(); i++) {
            WingSection inner = sections.get(i - 1);
            WingSection outer = sections.get(i);
            if (distance <= outer.at() || i == sections.size() - 1) {
                double t = Math.min(1, (distance - inner.at()) / (outer.at() - inner.at()));
                return chord
                        ? inner.chord() + t * (outer.chord() - inner.chord())
                        : inner.setBack() + t * (outer.setBack() - inner.setBack());
            }
        }
        throw new IllegalStateException("a wing has at least two sections");
    }
}
