package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;

/** Airfoils that stand in for others; how far off they are is a case under {@code validation/sections}. */
class SurrogateAirfoilTest {

    private final PackedAirfoils library = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();

    private List<Airfoil> measured() {
        return library.names().stream()
                // The second Clark Y is part of the first.
                .filter(name -> !name.equals("clark-y-b"))
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .toList();
    }

    /** A plate stands in for a plate only, and a symmetric airfoil for a symmetric one. */
    @Test
    void likeForLike() {
        assertThat(SurrogateAirfoil.ordinary(0.025, 0)
                        .among(measured(), "slab", "")
                        .orElseThrow()
                        .likeness())
                .contains(Likeness.standIn("flat-plate"));
        Airfoil tail =
                SurrogateAirfoil.ordinary(0.08, 0).among(measured(), "tail", "").orElseThrow();
        assertThat(tail.likeness()).contains(Likeness.standIn("naca0009"));
        SectionCurve curve = sections.curve(SectionPlace.of(tail), SurfaceState.none(), 100_000);
        assertThat(Math.toDegrees(curve.zeroLiftAngle())).isCloseTo(0, within(0.05));
    }
}
