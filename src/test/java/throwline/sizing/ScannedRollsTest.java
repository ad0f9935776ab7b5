package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.Roll;
import throwline.flight.StickStall;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Stick.Throws;
import throwline.model.Surface;

/** Throws of ailerons and flaps for rolling against plain scans of the same rolls; the scans make their own sticks. */
class ScannedRollsTest {

    private static final double DEGREE = Math.PI / 180;
    private static final double SPEED = 15;

    private final Orchard orchard = Orchard.asItIs();

    private static Stick.Roll stick(double up, double down, double flapUp, double flapDown) {
        Map<String, Throws> moved = new LinkedHashMap<>();
        moved.put("ailerons", new Throws(up * DEGREE, down * DEGREE));
        if (flapUp > 0 || flapDown > 0) {
            moved.put("flaps", new Throws(flapUp * DEGREE, flapDown * DEGREE));
        }
        return new Stick.Roll("scan", moved, List.of());
    }

    private Roll roll(SetUp setUp, Stick.Roll stick) {
        Flight flight = new Flight(orchard.airframe(), setUp);
        Attitude attitude = orchard.steady(flight, SPEED).orElseThrow();
        return flight.roll(stick, orchard.pack(), attitude).orElseThrow();
    }

    private RollThrow search(SetUp setUp) {
        return new RollThrow(orchard.airframe(), orchard.pack(), orchard.groups(), setUp, SPEED);
    }

    private static Throws ailerons(Stick.Roll stick) {
        return Objects.requireNonNull(stick.throwsBySurface().get("ailerons"));
    }

    /**
     * The ailerons stand 14 degrees up of 28: 14 are left, and 18 more than those down. The file's stick goes 12 up and 10 down,
     * so both sides are at their stops.
     */
    @Test
    void atTheStopsOfRaisedAilerons() {
        SetUp airbrake = orchard.setUp("airbrake");
        Roll atStops = roll(airbrake, stick(14, 32, 0, 0));
        FoundThrow found = search(airbrake).find(3 * atStops.rate(), "wanted").orElseThrow();
        assertThat(search(airbrake).atStops().orElseThrow()).isCloseTo(atStops.rate(), within(1e-9));
        assertThat(found.met()).isFalse();
        assertThat(found.why()).containsExactly(Limit.AILERON_TRAVEL);
        assertThat(found.rate()).isCloseTo(atStops.rate(), within(1e-9));
        assertThat(found.rateAtStops()).isCloseTo(atStops.rate(), within(1e-9));
        assertThat(found.yawing()).isCloseTo(atStops.yawing(), within(1e-9));
        assertThat(ailerons(found.stick()).up()).isCloseTo(14 * DEGREE, within(1e-9));
        assertThat(ailerons(found.stick()).down()).isCloseTo(32 * DEGREE, within(1e-9));
        // One degree less, for there is no more: only the side that goes on alone moves.
        double less = roll(airbrake, stick(14, 32 - 10.0 / 12, 0, 0)).rate();
        assertThat(found.perDegree()).isCloseTo(atStops.rate() - less, within(1e-9));
    }

    /** Half of the rate at the stops: one degree more on either side brings what a roll with it brings. */
    @Test
    void oneDegreeMore() {
        SetUp clean = orchard.model().reference();
        double wanted = 0.5 * search(clean).atStops().orElseThrow();
        FoundThrow found = search(clean).find(wanted, "wanted").orElseThrow();
        double up = ailerons(found.stick()).up() / DEGREE;
        assertThat(found.rate()).isCloseTo(wanted, within(2e-3 * wanted));
        assertThat(found.why()).isEmpty();
        double more = roll(clean, stick(up + 1, (up + 1) * 10 / 12, 0, 0)).rate();
        assertThat(found.perDegree()).isCloseTo(more - found.rate(), within(1e-9));
        Flight flight = new Flight(orchard.airframe(), clean);
        assertThat(found.letsGo())
                .isEqualTo(flight.lettingGo(
                                stick(up, up * 10 / 12, 0, 0),
                                orchard.pack(),
                                flight.stall(orchard.pack()).orElseThrow())
                        .map(StickStall::speed));
        assertThat(search(clean).descent().orElseThrow().steady().orElseThrow().speed())
                .isEqualTo(SPEED);
    }

    /** Without a roll stick of its own a model's ailerons go as far up as down, until one side is at its stop. */
    @Test
    void withoutAStickOfItsOwn(@TempDir Path folder) {
        Orchard plain = Orchard.with(
                folder,
                "  low rates:   {does: roll, ailerons: {up: 12 deg, down: 10 deg}}\n",
                "",
                "  with flaps:  {does: roll, ailerons: 18 deg, flaps: 8 deg, in: [clean, take-off flap, landing flap]}\n",
                "");
        RollThrow search = new RollThrow(
                plain.airframe(), plain.pack(), plain.groups(), plain.model().reference(), SPEED);
        Stick.Roll found = search.find(1.0, "wanted").orElseThrow().stick();
        assertThat(ailerons(found).up()).isCloseTo(ailerons(found).down(), within(1e-12));
        Stick.Roll most = search.find(99, "wanted").orElseThrow().stick();
        assertThat(ailerons(most).up()).isCloseTo(28 * DEGREE, within(1e-12));
        assertThat(ailerons(most).down()).isCloseTo(18 * DEGREE, within(1e-12));
    }

    /** A stick that goes further down than up keeps that ratio; at the stops each side is at its own. */
    @Test
    void furtherDownThanUp(@TempDir Path folder) {
        Orchard down =
                Orchard.with(folder, "ailerons: {up: 12 deg, down: 10 deg}", "ailerons: {up: 10 deg, down: 12 deg}");
        RollThrow search = new RollThrow(
                down.airframe(), down.pack(), down.groups(), down.model().reference(), SPEED);
        Stick.Roll found = search.find(0.5, "wanted").orElseThrow().stick();
        assertThat(ailerons(found).up() / ailerons(found).down()).isCloseTo(10.0 / 12, within(1e-9));
        Stick.Roll most = search.find(99, "wanted").orElseThrow().stick();
        assertThat(ailerons(most).up()).isCloseTo(28 * DEGREE, within(1e-9));
        assertThat(ailerons(most).down()).isCloseTo(18 * DEGREE, within(1e-9));
    }

    private RollHelp help(SetUp setUp, Stick.Roll stick) {
        return new RollHelpSearch(orchard.airframe(), orchard.pack(), orchard.groups(), setUp, stick)
                .at(SPEED)
                .orElseThrow();
    }

    /** Flaps that stand at neutral cannot go up: eight parts of the ailerons' throw, on the falling side only. */
    @Test
    void flapsThatOnlyGoDown() {
        SetUp clean = orchard.model().reference();
        Stick.Roll own = stick(18, 12, 5, 5);
        RollHelp help = help(clean, own);
        assertThat(help.speed()).isEqualTo(SPEED);
        assertThat(help.points()).hasSize(9);
        int best = 0;
        for (int k = 0; k <= 8; k++) {
            Roll scanned = roll(clean, stick(18, 12, 0, 18.0 * k / 8));
            RollHelp.Point point = help.points().get(k);
            assertThat(point.rate()).isCloseTo(scanned.rate(), within(1e-9));
            assertThat(point.yawing()).isCloseTo(scanned.yawing(), within(1e-9));
            assertThat(point.flapUp()).isZero();
            assertThat(point.flapDown()).isCloseTo(18 * DEGREE * k / 8, within(1e-12));
            assertThat(point.size()).isEqualTo(point.flapDown());
            best = point.rate() > help.points().get(best).rate() ? k : best;
        }
        assertThat(help.best()).isEqualTo(help.points().get(best));
        assertThat(help.stoppedBy()).isEqualTo(best == 8 ? Limit.AILERON_THROW : Limit.BEST_REACHED);
    }

    /** Flaps that stand at 55 degrees of 60: 5 are left down and all those up. */
    @Test
    void flapsThatStandDown() {
        SetUp down = new SetUp("down", Map.of("flaps", 55 * DEGREE), 0);
        Stick.Roll own = stick(18, 12, 0, 0);
        RollHelpSearch search = new RollHelpSearch(orchard.airframe(), orchard.pack(), orchard.groups(), down, own);
        RollHelp help = search.at(SPEED).orElseThrow();
        RollHelp.Point last = help.points().get(8);
        assertThat(last.flapUp()).isCloseTo(18 * DEGREE, within(1e-12));
        assertThat(last.flapDown()).isCloseTo(5 * DEGREE, within(1e-12));
        assertThat(last.rate()).isCloseTo(roll(down, stick(18, 12, 18, 5)).rate(), within(1e-9));
        Stick.Roll found = search.with(last, "found");
        assertThat(found.name()).isEqualTo("found");
        assertThat(found.throwsBySurface().keySet()).containsExactly("ailerons", "flaps");
        assertThat(found.throwsBySurface()).containsEntry("ailerons", new Throws(18 * DEGREE, 12 * DEGREE));
        assertThat(search.with(help.points().get(0), "none").throwsBySurface()).containsOnlyKeys("ailerons");
    }

    /** Flaps with less travel than the ailerons' throw end at their own stop where they help all the way. */
    @Test
    void flapsAtTheirEnd() {
        Surface flaps = orchard.groups().flaps().get(0);
        Surface little = new Surface(
                flaps.name(), flaps.from(), flaps.to(), flaps.chordFraction(), 0, 6 * DEGREE, flaps.hinge());
        SurfaceGroups groups =
                new SurfaceGroups(List.of(little), orchard.groups().ailerons());
        RollHelp help = new RollHelpSearch(
                        orchard.airframe(),
                        orchard.pack(),
                        groups,
                        orchard.model().reference(),
                        stick(18, 12, 0, 0))
                .at(SPEED)
                .orElseThrow();
        assertThat(help.best()).isEqualTo(help.points().get(8));
        assertThat(help.best().flapDown()).isCloseTo(6 * DEGREE, within(1e-12));
        assertThat(help.stoppedBy()).isEqualTo(Limit.FLAPS_DOWN);
    }

    /** Nothing to help with, or nothing to help. */
    @Test
    void noHelp() {
        SetUp clean = orchard.model().reference();
        SurfaceGroups noFlaps = new SurfaceGroups(List.of(), orchard.groups().ailerons());
        assertThat(new RollHelpSearch(orchard.airframe(), orchard.pack(), noFlaps, clean, stick(18, 12, 0, 0))
                        .at(SPEED))
                .isEmpty();
        assertThat(new RollHelpSearch(
                                orchard.airframe(),
                                orchard.pack(),
                                orchard.groups(),
                                clean,
                                new Stick.Roll("none", Map.of(), List.of()))
                        .at(SPEED))
                .isEmpty();
        assertThat(new RollHelpSearch(orchard.airframe(), orchard.pack(), orchard.groups(), clean, stick(18, 12, 0, 0))
                        .at(3))
                .isEmpty();
    }
}
