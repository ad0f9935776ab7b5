package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.PullUp;
import throwline.flight.Roll;
import throwline.flight.Stall;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.MeasuredSections;

/**
 * Searches against plain scans of the same flights: nothing that a scan finds is better than what the search found. The scans
 * make their own sticks and set-ups.
 */
class ScannedSearchesTest {

    private static final double DEGREE = Math.toRadians(1);

    private final Model model = read();
    private final Airframe airframe = new Airframe(model, new PackedAirfoils(), new MeasuredSections());
    private final Pack pack = model.packs().get(0);
    private final SetUp clean = model.reference();
    private final SurfaceGroups groups = SurfaceGroups.of(model);

    private static Model read() {
        ReadModel read = ModelFile.read(Path.of("examples", "orchard.yaml"), new PackedAirfoils());
        return ((ReadModel.Project) read).model();
    }

    @Test
    @DisplayName(
            "A throw for a roll rate is the least that a scan in quarter degrees finds, up and down in the model's ratio")
    void leastThrow() {
        RollThrow search = new RollThrow(airframe, pack, groups, clean, 15);
        double wanted = 0.6 * search.atStops().orElseThrow();
        FoundThrow found = search.find(wanted, "wanted").orElseThrow();
        Flight flight = new Flight(airframe, clean);
        Attitude attitude = steady(flight, 15).orElseThrow();
        int least = IntStream.rangeClosed(1, 72)
                .filter(k -> rate(flight, attitude, k * DEGREE / 4) >= wanted)
                .findFirst()
                .orElseThrow();
        Stick.Throws throwsFound =
                Objects.requireNonNull(found.stick().throwsBySurface().get("ailerons"));
        assertThat(found.met()).isTrue();
        assertThat(throwsFound.down() / throwsFound.up()).isCloseTo(10.0 / 12, within(1e-9));
        assertThat(throwsFound.up()).isGreaterThan((least - 1) * DEGREE / 4 - 1e-4);
        assertThat(throwsFound.up()).isLessThan(least * DEGREE / 4 + 1e-4);
    }

    /** The file's stick goes 12 degrees up and 10 down. */
    private double rate(Flight flight, Attitude attitude, double up) {
        Stick.Roll stick = new Stick.Roll("scan", Map.of("ailerons", new Stick.Throws(up, up * 10 / 12)), List.of());
        return flight.roll(stick, pack, attitude).map(Roll::rate).orElse(0.0);
    }

    @Test
    @DisplayName(
            "A mix is the elevator between steady flights with the lever in between; straight lines err as it says")
    void mixOfTheLever() {
        SetUp landing = setUp("landing flap");
        double speed = 13;
        MixCurve curve = new MixSearch(airframe, pack, clean, landing)
                .at(speed, Optional.empty())
                .orElseThrow();
        double start = elevator(clean, speed);
        double full = landing.deflection("flaps");
        double worst = 0;
        for (int k = 0; k <= 16; k++) {
            double lever = k / 16.0;
            double wanted = elevator(new SetUp("scan", Map.of("flaps", lever * full), 0), speed) - start;
            worst = Math.max(worst, Math.abs(line(curve.points(), lever) - wanted));
        }
        assertThat(worst).isCloseTo(curve.straightError(), within(0.01 * DEGREE));
        assertThat(worst).isLessThan(curve.points().size() < MixSearch.MOST ? 0.21 * DEGREE : 2 * DEGREE);
    }

    @Test
    @DisplayName("A mix between two set-ups that both move surfaces, with as many points as asked for or as are needed")
    void mixBetweenTwoSetUps() {
        SetUp landing = setUp("landing flap");
        SetUp airbrake = setUp("airbrake");
        MixSearch search = new MixSearch(airframe, pack, landing, airbrake);
        MixCurve curve = search.at(14, Optional.of(3)).orElseThrow();
        assertThat(curve.points()).hasSize(3);
        assertThat(curve.points().get(0)).isEqualTo(new MixCurve.Point(0, 0));
        for (MixCurve.Point point : curve.points()) {
            double lever = point.lever();
            SetUp between =
                    new SetUp("scan", Map.of("flaps", (35 + 20 * lever) * DEGREE, "ailerons", -14 * lever * DEGREE), 0);
            assertThat(point.elevator()).isCloseTo(elevator(between, 14) - elevator(landing, 14), within(1e-4));
        }
        assertThat(curve.otherSpeeds()).hasSize(3);
        for (MixCurve.AtSpeed other : curve.otherSpeeds()) {
            assertThat(other.elevator())
                    .isCloseTo(elevator(airbrake, other.speed()) - elevator(landing, other.speed()), within(1e-4));
        }
        assertThat(curve.otherSpeeds().get(0).speed()).isCloseTo(0.9 * 14, within(1e-9));
        MixCurve bent = new MixSearch(airframe, pack, clean, landing)
                .at(11, Optional.empty())
                .orElseThrow();
        assertThat(bent.points()).hasSize(MixSearch.MOST);
        assertThat(bent.straightError()).isLessThan(0.2 * DEGREE);
        assertThat(new MixSearch(airframe, pack, clean, landing).at(5, Optional.empty()))
                .isEmpty();
    }

    private static double line(List<MixCurve.Point> points, double lever) {
        int k = 1;
        while (points.get(k).lever() < lever) {
            k++;
        }
        MixCurve.Point a = points.get(k - 1);
        MixCurve.Point b = points.get(k);
        return a.elevator() + (lever - a.lever()) / (b.lever() - a.lever()) * (b.elevator() - a.elevator());
    }

    @Test
    @DisplayName(
            "No pull of a scan over flaps and elevator that leaves two degrees to the stall is tighter by a hundredth")
    void tightestPull() {
        double speed = 18;
        LoopHelp found = new LoopSearch(airframe, pack, groups, clean, 1)
                .at(14 * DEGREE, speed, List.of())
                .orElseThrow();
        Flight flight = new Flight(airframe, clean);
        Stall stall = flight.stall(pack).orElseThrow();
        double best = 0;
        for (double flap = 0; flap <= 24.1; flap += 4) {
            for (double up = 1; up <= 25; up += 2) {
                Map<String, Double> moved = flap == 0 ? Map.of() : Map.of("flaps", flap * DEGREE);
                Stick.Pull stick = new Stick.Pull("scan", moved, -up * DEGREE, List.of());
                Optional<PullUp> pull = flight.pull(stick, pack, stall, speed);
                if (pull.filter(p -> p.limit() == PullUp.Limit.ELEVATOR && p.angleLeft() >= 2 * DEGREE)
                        .isPresent()) {
                    best = Math.max(best, pull.get().load());
                }
            }
        }
        assertThat(best).isGreaterThan(1.5);
        assertThat(found.best().load()).isGreaterThan(0.99 * best);
        assertThat(found.points())
                .allSatisfy(point -> assertThat(point.load())
                        .isLessThanOrEqualTo(found.best().load()));
    }

    private SetUp setUp(String name) {
        return model.setUps().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private double elevator(SetUp setUp, double speed) {
        return steady(new Flight(airframe, setUp), speed).orElseThrow().elevator();
    }

    private Optional<Attitude> steady(Flight flight, double speed) {
        Stall stall = flight.stall(pack).orElseThrow();
        return flight.descent(pack, stall, speed).steady();
    }
}
