package throwline.liftingline;

import java.util.List;
import throwline.section.SectionCurve;

/**
 * Flight condition of a lifting surface.
 *
 * @param curves one section curve a strip, left tip to right tip
 * @param incidence of the chord at the middle against the undisturbed air, rad
 * @param motion rates and sideslip
 * @param inflow what other surfaces do to the air at each strip
 */
public record LiftingLineProblem(List<SectionCurve> curves, double incidence, Motion motion, Inflow inflow) {

    public LiftingLineProblem {
        curves = List.copyOf(curves);
    }

    /** A surface in clean air. */
    public static LiftingLineProblem of(List<SectionCurve> curves, double incidence, Motion motion) {
        return new LiftingLineProblem(curves, incidence, motion, Inflow.clean(curves.size()));
    }

    /** True where left and right carry the same load. */
    boolean isSymmetric() {
        if (!motion.isSymmetric()) {
            return false;
        }
        int n = curves.size();
        for (int i = 0; i < n / 2; i++) {
            int j = n - 1 - i;
            if (!curves.get(i).equals(curves.get(j))
                    || inflow.downwash(i) != inflow.downwash(j)
                    || inflow.speed(i) != inflow.speed(j)) {
                return false;
            }
        }
        return true;
    }
}
