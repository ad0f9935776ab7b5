package throwline.section;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Section curves from measured polars, moved by published methods where a surface stands at an angle that was not
 * measured. Keeps what depends on an airfoil alone; safe for several threads.
 */
public final class MeasuredSections implements SectionAerodynamics {

    private final FlapMethod method = new FlapMethod(FlapTables.load());
    private final Map<Airfoil, AirfoilPolars> polars = Collections.synchronizedMap(new IdentityHashMap<>());

    @Override
    public SectionCurve curve(SectionPlace place, SurfaceState surface, double reynolds) {
        if (place.weight() <= 0 || place.inner().equals(place.outer())) {
            return curve(place.inner(), surface, reynolds);
        }
        if (place.weight() >= 1) {
            return curve(place.outer(), surface, reynolds);
        }
        return curve(place.inner(), surface, reynolds).blend(curve(place.outer(), surface, reynolds), place.weight());
    }

    private TabulatedCurve curve(Airfoil airfoil, SurfaceState surface, double reynolds) {
        return polars.computeIfAbsent(airfoil, wanted -> AirfoilPolars.of(wanted, method))
                .curve(surface, reynolds);
    }
}
