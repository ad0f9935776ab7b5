package throwline.study;

import java.util.List;
import throwline.section.Airfoil;

/**
 * Section at several Reynolds numbers and at several deflections, with what was measured on it.
 *
 * @param airfoil the airfoil and its measurements
 * @param byReynolds at the deflection asked for, rising Reynolds number
 * @param byDeflection at the Reynolds number asked for, rising deflection
 */
public record SectionFamily(Airfoil airfoil, List<SectionSweep> byReynolds, List<SectionSweep> byDeflection) {

    public SectionFamily {
        byReynolds = List.copyOf(byReynolds);
        byDeflection = List.copyOf(byDeflection);
    }
}
