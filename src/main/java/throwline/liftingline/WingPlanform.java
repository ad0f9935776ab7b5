package throwline.liftingline;

import throwline.model.Wing;
import throwline.model.WingSection;

/** The planform of a wing as its owner described it. */
public record WingPlanform(Wing wing) implements Planform {

    @Override
    public double semiSpan() {
        return wing.semiSpan();
    }

    @Override
    public double[] breaks() {
        return wing.sections().stream()
                .mapToDouble(WingSection::at)
                .filter(at -> at > 0 && at < wing.semiSpan())
                .toArray();
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
