package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.section.MeasuredSections;

/** A surface that moves on one side only, against closed forms and by symmetry. */
class OneSideTest {

    private static final double DEGREE = Math.toRadians(1);
    private static final double SEMI_SPAN = 0.92;
    private static final double CHORD = 0.3;
    private static final SetUp CLEAN = new SetUp("clean", Map.of(), 0);

    private static final PoweredModel ORCHARD = new PoweredModel();

    private static Surface surface(Model model, String name) {
        return model.wing().surfaces().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Attitude approach(Flight flight) {
        Stall stall = flight.stall(ORCHARD.pack).orElseThrow();
        return flight.descent(ORCHARD.pack, stall, stall.approachSpeed())
                .steady()
                .orElseThrow();
    }

    private static Stick.Roll ailerons(double up, double down) {
        return new Stick.Roll("roll", Map.of("ailerons", new Stick.Throws(up * DEGREE, down * DEGREE)), List.of());
    }

    /**
     * An aileron that stays up while the other goes back: the stick that raises the other as far makes left and right alike
     * again, whatever the aeroplane, so the share is the one angle over the other. One that stays down likewise.
     */
    @Test
    void theOtherAileronAsFarMakesBothSidesAlike() {
        Model model = ORCHARD.model;
        for (double[] angles : new double[][] {{-14, 20, 9}, {-6, 12, 10}, {-2, 25, 25}, {8, 11, 16}}) {
            SetUp out = new SetUp("out", Map.of("ailerons", angles[0] * DEGREE), 0);
            Flight flight = new Flight(ORCHARD.airframe, out);
            OneSide side = flight.oneSideStays(
                    out, CLEAN, surface(model, "ailerons"), ailerons(angles[1], angles[2]), approach(flight));
            double throwOfTheOther = angles[0] < 0 ? angles[1] : angles[2];
            assertThat(side.share().orElseThrow()).isCloseTo(Math.abs(angles[0]) / throwOfTheOther, within(2e-3));
        }
    }

    /** Nothing has moved: nothing to hold. Twice as far takes more, and a stick that moves nothing holds nothing. */
    @Test
    void theFurtherApartTheMoreStick() {
        Model model = ORCHARD.model;
        Surface flaps = surface(model, "flaps");
        double before = -1e-9;
        for (double angle : new double[] {0, 5, 15, 35, 55}) {
            SetUp out = new SetUp("out", Map.of("flaps", angle * DEGREE), 0);
            Flight flight = new Flight(ORCHARD.airframe, out);
            OneSide side = flight.oneSideStays(CLEAN, out, flaps, ailerons(12, 10), approach(flight));
            assertThat(side.share().orElseThrow()).isGreaterThan(before);
            before = side.share().orElseThrow();
            assertThat(flight.oneSideStays(CLEAN, out, flaps, ailerons(0, 0), approach(flight))
                            .share())
                    .isEmpty();
        }
    }

    /** Full stick holds down to a speed between the stall and the approach, and no slower with less stick. */
    @Test
    void theSlowestSpeedLiesAboveTheStall() {
        SetUp out = new SetUp("out", Map.of("flaps", 35 * DEGREE), 0);
        Flight flight = new Flight(ORCHARD.airframe, out);
        Stall stall = flight.stall(ORCHARD.pack).orElseThrow();
        Surface flaps = surface(ORCHARD.model, "flaps");
        double before = stall.approachSpeed();
        for (double up : new double[] {8, 12, 16}) {
            OneSide side = flight.oneSideStays(CLEAN, out, flaps, ailerons(up, up), approach(flight));
            assertThat(side.share().orElseThrow()).isLessThan(1);
            assertThat(side.slowest().orElseThrow()).isBetween(stall.speed(), before * 1.02);
            before = side.slowest().orElseThrow();
        }
    }

    /** A mirrored wing rolls the other way as hard. */
    @Test
    void leftAndRightAreAlike() {
        Trimmer trimmer = new Trimmer(ORCHARD.airframe, new Deflections(Map.of(), Map.of(), false));
        RollSolver solver = new RollSolver(ORCHARD.airframe, trimmer.wingCurves());
        Map<String, Double> flap = Map.of("flaps", 35 * DEGREE);
        Map<String, Double> aileron = Map.of("ailerons", 5 * DEGREE);
        Deflections left = new Deflections(flap, aileron, false);
        Deflections right = new Deflections(aileron, flap, false);
        double one = solver.atRest(left, 11, 3 * DEGREE);
        assertThat(one).isGreaterThan(0);
        assertThat(solver.atRest(right, 11, 3 * DEGREE)).isCloseTo(-one, within(1e-9));
    }

    /**
     * A wing whose chord is an ellipse: its lifting line solved for {@code sin 2 theta} gives a rolling moment in proportion to
     * the integral of angle times chord times arm (Glauert's series, closed form), so that the share is a ratio of two such
     * integrals: one flap over two ailerons.
     */
    @Test
    void onAnEllipticWingTheShareIsARatioOfIntegrals(@TempDir Path folder) throws IOException {
        Model model = elliptic(folder);
        Airframe airframe = new Airframe(model, new PackedAirfoils(), new MeasuredSections());
        SetUp out = new SetUp("out", Map.of("flaps", 2 * DEGREE), 0);
        Flight flight = new Flight(airframe, out);
        double flap = moment(0.075, 0.46) * 2;
        double both = 2 * moment(0.47, 0.88) * 3;
        OneSide side = flight.oneSideStays(CLEAN, out, surface(model, "flaps"), ailerons(3, 3), approach(flight));
        assertThat(side.share().orElseThrow()).isCloseTo(flap / both, withPercentage(5));
    }

    private static double chord(double y) {
        return CHORD * Math.sqrt(1 - Math.pow(y / SEMI_SPAN, 2));
    }

    private static double moment(double from, double to) {
        UnivariateFunction arm = y -> chord(y) * y;
        return new SimpsonIntegrator(1e-8, 1e-12, 3, 30).integrate(100_000, arm, from, to);
    }

    private static Model elliptic(Path folder) throws IOException {
        StringBuilder sections = new StringBuilder();
        for (double share : new double[] {0, 0.2, 0.4, 0.55, 0.68, 0.78, 0.86, 0.92, 0.96, 1}) {
            double chord = chord(Math.min(share, 0.985) * SEMI_SPAN);
            sections.append(String.format(
                    Locale.ROOT,
                    "    - {at: %.2f mm, chord: %.2f mm, airfoil: clark-y-b, set back: %.3f mm}%n",
                    1000 * share * SEMI_SPAN,
                    1000 * chord,
                    250 * (CHORD - chord)));
        }
        String text = Files.readString(Path.of("examples", "orchard.yaml"))
                .replaceAll("(?m)^    - \\{at: 0 mm.*\\R    - \\{at: 920 mm.*\\R", sections.toString());
        Path file = folder.resolve("ellipse.yaml");
        Files.writeString(file, text);
        if (ModelFile.read(file, new PackedAirfoils()) instanceof ReadModel.Project project) {
            return project.model();
        }
        throw new AssertionError(ModelFile.read(file, new PackedAirfoils()).toString());
    }
}
