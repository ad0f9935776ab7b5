package throwline.section;

import java.util.List;
import java.util.Optional;

/**
 * An airfoil with everything that was measured on it.
 *
 * @param name library name, or what the user called it
 * @param description one line in words
 * @param thickness largest thickness over chord
 * @param camber largest camber over chord
 * @param nominalMoment quarter-chord moment of the attached flow, used where none was measured
 * @param runs the measurements, at least one
 * @param likeness whose measurements these are, moved to this airfoil; empty where they are its own
 * @param shape its outline; empty where not known
 */
public record Airfoil(
        String name,
        String description,
        double thickness,
        double camber,
        double nominalMoment,
        List<PolarRun> runs,
        Optional<Likeness> likeness,
        Optional<AirfoilShape> shape) {

    public Airfoil {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("an airfoil needs at least one measurement");
        }
    }

    /** By name: measurements are many and airfoils few. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Airfoil a
                        && name.equals(a.name)
                        && description.equals(a.description)
                        && thickness == a.thickness
                        && camber == a.camber
                        && nominalMoment == a.nominalMoment
                        && runs.equals(a.runs));
    }

    /** An airfoil with measurements of its own. */
    public Airfoil(
            String name,
            String description,
            double thickness,
            double camber,
            double nominalMoment,
            List<PolarRun> runs) {
        this(name, description, thickness, camber, nominalMoment, runs, Optional.empty(), Optional.empty());
    }

    /** This airfoil as one that stands in for another of which so much is known. */
    public Airfoil asStandInFor(SurrogateAirfoil said) {
        return new Airfoil(
                name,
                description,
                said.thickness(),
                said.camber(),
                said.measuredMoment(),
                runs,
                likeness.map(like -> Likeness.standIn(like.donor())),
                shape);
    }

    /** This airfoil with the reason why its outline was not put to use. */
    public Airfoil notComputed(NotComputed reason) {
        return new Airfoil(
                name,
                description,
                thickness,
                camber,
                nominalMoment,
                runs,
                likeness.map(like -> like.because(reason)),
                shape);
    }

    /** This airfoil with its outline known. */
    public Airfoil with(AirfoilShape outline) {
        return new Airfoil(name, description, thickness, camber, nominalMoment, runs, likeness, Optional.of(outline));
    }
}
