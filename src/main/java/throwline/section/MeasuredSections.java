package throwline.section;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * Section curves from measured polars, moved by published methods where a surface stands at an angle that was not
 * measured. Keeps what depends on an airfoil alone; safe for several threads.
 */
public final class MeasuredSections implements SectionAerodynamics {

    private final FlapMethod method = new FlapMethod(FlapTables.load());
    private final Map<Airfoil, AirfoilPolars> polars = Collections.synchronizedMap(new IdentityHashMap<>());

    @Override
    public TabulatedCurve curve(SectionPlace place, SurfaceState surface, double reynolds) {
        if (place.weight() <= 0 || place.inner().equals(place.outer())) {
            return curve(place.inner(), surface, reynolds);
        }
        if (place.weight() >= 1) {
            return curve(place.outer(), surface, reynolds);
        }
        return curve(place.inner(), surface, reynolds).blend(curve(place.outer(), surface, reynolds), place.weight());
    }

    @Override
    public CurveFamily family(SectionPlace place, SurfaceState surface) {
        DoubleStream bends = DoubleStream.concat(
                polars(place.inner()).bends(), polars(place.outer()).bends());
        return new ReynoldsCurves(bends, reynolds -> curve(place, surface, reynolds));
    }

    private TabulatedCurve curve(Airfoil airfoil, SurfaceState surface, double reynolds) {
        return polars(airfoil).curve(surface, reynolds);
    }

    private AirfoilPolars polars(Airfoil airfoil) {
        return polars.computeIfAbsent(airfoil, wanted -> AirfoilPolars.of(wanted, method));
    }
}
