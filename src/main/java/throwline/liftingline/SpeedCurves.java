package throwline.liftingline;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import throwline.model.Surface;
import throwline.section.SectionCurve;

/**
 * The section curves of a wing at one speed with its surfaces at many deflections; sections that stand alike are made once.
 * For one thread.
 */
public final class SpeedCurves {

    private final WingStrips strips;
    private final double reynoldsPerMetre;
    private final Map<WingStrips.Section, Map<Double, SectionCurve>> made = new HashMap<>();

    /**
     * @param strips of the wing
     * @param reynoldsPerMetre Reynolds number per metre of chord: speed over kinematic viscosity
     */
    public SpeedCurves(WingStrips strips, double reynoldsPerMetre) {
        this.strips = strips;
        this.reynoldsPerMetre = reynoldsPerMetre;
    }

    /**
     * One curve a strip, as {@link WingStrips#curves(ToDoubleBiFunction, double)}.
     *
     * @param deflection deflection of a surface, rad, by surface and side (-1 left, 1 right)
     */
    public List<SectionCurve> at(ToDoubleBiFunction<Surface, Integer> deflection) {
        return strips.curves(
                        deflection,
                        section -> {
                            Map<Double, SectionCurve> curves = made.computeIfAbsent(section, wanted -> new HashMap<>());
                            return reynolds ->
                                    curves.computeIfAbsent(reynolds, wanted -> strips.curve(section, wanted));
                        },
                        Map.of())
                .at(reynoldsPerMetre);
    }
}
