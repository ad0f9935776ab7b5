package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Hinge;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.section.MeasuredSections;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * Hinge gaps, horns and servo bumps take 5 to 15 per cent of the wing's section drag, the corner of wing and body 5 to 10
 * above or in the middle and 10 to 20 on a low wing (PRACTICE, methods manual 8.4).
 */
class GapsAndCornersTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    private static Model with(List<Surface> surfaces, double height) {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), AIRFOILS);
        Model m = project.model();
        Wing w = m.wing();
        return new Model(
                m.name(),
                m.packs(),
                new Wing(height, w.incidence(), w.dihedral(), w.sections(), surfaces),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                m.sticks());
    }

    private static List<Surface> surfaces(Hinge hinge) {
        return List.of(new Surface("ailerons", 0.4, 0.8, 0.25, 0.3, 0.3, hinge));
    }

    /** Drag of gaps and corner over the wing's area times its section's drag where that lifts 0.4. */
    private static double share(List<Surface> surfaces, double height) {
        Model m = with(surfaces, height);
        Airframe airframe = new Airframe(m, AIRFOILS, new MeasuredSections());
        double area = airframe.dragItems().stream()
                .filter(item -> item.name().equals("gaps and corners"))
                .mapToDouble(DragItem::area)
                .sum();
        SectionCurve curve = new MeasuredSections()
                .curve(
                        SectionPlace.of(AIRFOILS.find(m.wing().sections().get(0).airfoil())
                                .orElseThrow()),
                        SurfaceState.none(),
                        airframe.reynoldsPerMetre(12) * m.wing().meanAerodynamicChord());
        double alpha = new BrentSolver(1e-6).solve(100, a -> curve.lift(a) - 0.4, -0.1, 0.15);
        return area / (m.wing().area() * curve.drag(alpha));
    }

    @Test
    void whatGapsAndCornersTake() {
        double corner = share(List.of(), 0.06);
        assertThat(corner).isBetween(0.05, 0.10);
        assertThat(share(List.of(), -0.06)).isBetween(0.10, 0.20);
        assertThat(share(surfaces(Hinge.TAPED), 0.06) - corner).isBetween(0.04, 0.10);
        assertThat(share(surfaces(Hinge.OPEN), 0.06) - corner).isBetween(0.10, 0.17);
    }
}
