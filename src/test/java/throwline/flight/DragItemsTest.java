package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Body;
import throwline.model.Model;
import throwline.model.Propeller;
import throwline.model.Propeller.Shut;
import throwline.model.Wheels;

class DragItemsTest {

    private static Propeller thirteenInch(Shut shut) {
        return new Propeller(0.33, 0.165, 2, shut, 0);
    }

    /** Methods manual 8.3, figures of a 13-inch two-blade worked by hand (COMPUTED): stopped 0.0065, turning 0.0086 m2. */
    @Test
    void propellerWithTheThrottleShut() {
        assertThat(DragItems.propeller(thirteenInch(Shut.STOPPED))).isCloseTo(0.0065, withPercentage(3));
        assertThat(DragItems.propeller(thirteenInch(Shut.TURNING))).isCloseTo(0.0086, withPercentage(1));
        assertThat(DragItems.propeller(thirteenInch(Shut.FOLDED))).isZero();
    }

    private static double body(double length, double diameter, double reynoldsPerMetre) {
        Body round = new Body(length, diameter * Math.sqrt(Math.PI) / 2, diameter * Math.sqrt(Math.PI) / 2, 0, false);
        return part(with(round, Optional.empty()), "body", reynoldsPerMetre);
    }

    private static double part(Model model, String name, double reynoldsPerMetre) {
        return new DragItems(model, reynoldsPerMetre)
                .all().stream()
                        .filter(item -> item.name().equals(name))
                        .mapToDouble(DragItem::area)
                        .sum();
    }

    private static Model with(Body body, Optional<Wheels> wheels) {
        ReadModel.Project project =
                (ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), new PackedAirfoils());
        Model m = project.model();
        return new Model(
                m.name(),
                m.packs(),
                m.wing(),
                m.tail(),
                body,
                wheels,
                m.propeller(),
                m.field(),
                m.setUps(),
                m.sticks());
    }

    /**
     * Streamline bodies of revolution: the ship model basins' friction line of 1957, {@code 0.075 / (log10 Re - 2)^2} (MEMORY),
     * on the whole surface of a prolate spheroid (closed form), with the excess {@code 1 + 1.5 (d/l)^1.5 + 7 (d/l)^3} (S. F.
     * Hoerner, Fluid-Dynamic Drag, chapter 6, MEMORY). Two handbooks' bodies differ by less than a sixth.
     */
    @ParameterizedTest
    @ValueSource(doubles = {4, 5, 6, 8, 10, 12})
    void roundedBody(double fineness) {
        double length = 1.2;
        double diameter = length / fineness;
        double slim = Math.sqrt(1 - 1 / (fineness * fineness));
        double surface = Math.PI / 2 * diameter * (diameter + length * Math.asin(slim) / slim);
        double friction = 0.075 / Math.pow(Math.log10(8e5 * length) - 2, 2);
        double excess = 1 + 1.5 * Math.pow(fineness, -1.5) + 7 * Math.pow(fineness, -3);
        // At four the textbook's own excess, 1.95, is known to be high: its sixty is for 6 and more.
        double allowed = fineness < 6 ? 70 : 17;
        assertThat(body(length, diameter, 8e5)).isCloseTo(friction * excess * surface, withPercentage(allowed));
    }

    /** However slim, a body has no less drag than a plate of its surface (closed form: spheroid), friction as above. */
    @ParameterizedTest
    @ValueSource(doubles = {10, 20, 30})
    void aBodyIsNoBetterThanAPlate(double fineness) {
        double surface = Math.PI * Math.PI / 4 * 2 * 2 / fineness;
        double friction = 0.455 / Math.pow(Math.log10(5e5 * 2), 2.58);
        assertThat(body(2, 2 / fineness, 5e5)).isGreaterThan(0.99 * friction * surface);
        assertThat(friction).as("0.0044 to 0.0045 at a million (MEMORY)").isBetween(0.0044, 0.0045);
    }

    /** A blunt box has 0.3 to 0.5 of its frontal area (PRACTICE), many times what a rounded body has. */
    @Test
    void boxyBody() {
        double box = part(with(new Body(1.2, 0.12, 0.15, 0, true), Optional.empty()), "body", 8e5);
        assertThat(box).isBetween(0.3 * 0.12 * 0.15, 0.5 * 0.12 * 0.15);
    }

    /**
     * Wheels 0.25 to 0.5 of diameter times width, round wire 1.1 to 1.2, sheet 1.0 to 1.4, faired legs 0.1 to 0.2 of their
     * frontal area (MEMORY), of which 44 per cent of the whole are fittings and interference (NACA Report 485, READ).
     */
    @ParameterizedTest
    @CsvSource({"WIRE, 1.1, 1.2", "SHEET, 1.0, 1.4", "FAIRED, 0.1, 0.2", "NONE, 0, 0"})
    void undercarriage(Wheels.Legs legs, double least, double most) {
        Body box = new Body(1.2, 0.12, 0.15, 0, true);
        double area = part(with(box, Optional.of(new Wheels(2, 0.08, 0.03, legs, 0.15, 0.004))), "wheels", 8e5);
        double wheel = 0.08 * 0.03;
        double leg = 0.15 * 0.004;
        assertThat(area).isBetween(2 * (0.25 * wheel + least * leg) / 0.56, 2 * (0.5 * wheel + most * leg) / 0.56);
    }
}
