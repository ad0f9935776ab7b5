package throwline.section;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Sections that are no longer made once a person has stopped the work that asks for them: the next one that is asked for
 * ends it with a {@link CancellationException}, on whatever thread. Until then they are the sections that they stand for.
 *
 * @param sections makes the curves
 * @param stopped true once the work is to end; asked on every thread
 */
public record StoppableSections(SectionAerodynamics sections, BooleanSupplier stopped) implements SectionAerodynamics {

    @Override
    public SectionCurve curve(SectionPlace place, SurfaceState surface, double reynolds) {
        goOn();
        return sections.curve(place, surface, reynolds);
    }

    @Override
    public CurveFamily family(SectionPlace place, SurfaceState surface) {
        goOn();
        CurveFamily family = sections.family(place, surface);
        return reynolds -> {
            goOn();
            return family.at(reynolds);
        };
    }

    private void goOn() {
        if (stopped.getAsBoolean()) {
            throw new CancellationException("stopped");
        }
    }
}
