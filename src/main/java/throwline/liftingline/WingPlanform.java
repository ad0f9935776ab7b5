package throwline.liftingline;

import java.util.List;
import java.util.stream.IntStream;
import throwline.model.Wing;
import throwline.model.WingSection;

/** The planform of a wing as its owner described it. */
public record WingPlanform(Wing wing) implements Planform {

    /** A section that misses the straight line by less than this share of its chord, or this many radians, is no bend: nobody builds to that. */
    private static final double STRAIGHT = 1e-3;

    @Override
    public double semiSpan() {
        return wing.semiSpan();
    }

    /** The sections between root and tip that do not lie on the straight line between their neighbours. */
    @Override
    public double[] breaks() {
        List<WingSection> sections = wing.sections();
        return IntStream.range(1, sections.size() - 1)
                .filter(i -> bends(sections.get(i - 1), sections.get(i), sections.get(i + 1)))
                .mapToDouble(i -> sections.get(i).at())
                .toArray();
    }

    private static boolean bends(WingSection inner, WingSection middle, WingSection outer) {
        double share = (middle.at() - inner.at()) / (outer.at() - inner.at());
        return !inner.airfoil().equals(middle.airfoil())
                || !middle.airfoil().equals(outer.airfoil())
                || isOff(share, inner.chord(), middle.chord(), outer.chord(), STRAIGHT * middle.chord())
                || isOff(share, inner.setBack(), middle.setBack(), outer.setBack(), STRAIGHT * middle.chord())
                || isOff(share, inner.washout(), middle.washout(), outer.washout(), STRAIGHT);
    }

    private static boolean isOff(double share, double inner, double middle, double outer, double within) {
        return Math.abs(inner + share * (outer - inner) - middle) > within;
    }

    @Override
    public double chord(double y) {
        return wing.chordAt(y);
    }

    @Override
    public double twist(double y) {
        Panel panel = panel(y);
        return -(panel.inner.washout() + panel.share * (panel.outer.washout() - panel.inner.washout()));
    }

    @Override
    public double quarterChord(double y) {
        return wing.leadingEdgeAt(y) + (wing.chordAt(y) - wing.chordAt(0)) / 4;
    }

    @Override
    public double sweep(double y) {
        return wing.sweepOfPanel(panel(y).number);
    }

    @Override
    public double dihedral() {
        return wing.dihedral();
    }

    private Panel panel(double y) {
        int last = wing.sections().size() - 1;
        int i = 1;
        while (i < last && y > wing.sections().get(i).at()) {
            i++;
        }
        WingSection inner = wing.sections().get(i - 1);
        WingSection outer = wing.sections().get(i);
        return new Panel(i - 1, inner, outer, (y - inner.at()) / (outer.at() - inner.at()));
    }

    private record Panel(int number, WingSection inner, WingSection outer, double share) {}
}
