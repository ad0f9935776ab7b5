package throwline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.flight.Descent.Outcome;
import throwline.flight.Flight;
import throwline.flight.LoopPath;
import throwline.flight.PathPoint;
import throwline.flight.PullUp;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.study.Handling.Gain;
import throwline.study.Handling.Loop;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** The tightest pulls of one set-up with one pack, and what flaps that go with the elevator bring in them. */
final class PullStudy {

    /** Entry speeds of a loop over the reference's stall speed, where none are given (PRACTICE). */
    private static final double[] ENTRIES = {1.8, 2.4, 3.0};

    /** A pull below this load bends no path worth a word. */
    static final double LEAST = 1.05;

    /** Elevator throws that differ by less are the same, rad. */
    private static final double SAME = Math.toRadians(0.05);

    private final Flight flight;
    private final Model model;
    private final Pack pack;
    private final SetUp setUp;
    private final Stall stall;
    private final Bands bands;
    private final Optional<LoopAnswer> powered;

    PullStudy(Flight flight, Pack pack, SetUp setUp, Stall stall, Bands bands) {
        this.flight = flight;
        this.pack = pack;
        this.setUp = setUp;
        this.stall = stall;
        this.bands = bands;
        model = flight.airframe().model();
        powered = flight.airframe()
                .drive(pack)
                .map(drive -> new LoopAnswer(flight.airframe(), setUp, pack, drive, stall, bands));
    }

    /** Entry speeds where none are given: whole metres a second. */
    static List<Double> entries(Stall reference) {
        return Arrays.stream(ENTRIES)
                .mapToObj(ratio -> Math.rint(ratio * reference.speed()))
                .toList();
    }

    /**
     * A pull that is looked at.
     *
     * @param stick it
     * @param withoutFlaps true for one that was made from a stick of the model by leaving its flaps out
     */
    private record Pull(Stick.Pull stick, boolean withoutFlaps) {}

    /** What pulls do at these speeds, m/s. */
    record Pulls(List<Loop> loops, List<Gain> gains, List<Message> none) {}

    Pulls at(List<Double> speeds) {
        List<Loop> loops = new ArrayList<>();
        List<Message> none = new ArrayList<>();
        List<Pull> pulls = pulls();
        List<Double> flown = new ArrayList<>();
        for (double speed : speeds) {
            Optional<Message> why = noFlight(speed);
            why.ifPresentOrElse(none::add, () -> flown.add(speed));
        }
        for (Pull pull : pulls) {
            for (double speed : flown) {
                Optional<PullUp> found = flight.pull(pull.stick, pack, stall, speed);
                if (found.isEmpty() || found.get().load() <= LEAST) {
                    none.add(Message.of(
                            found.isEmpty() ? "note.loop.not-found" : "note.loop.hardly",
                            new Quantity(speed, Dimension.SPEED),
                            pull.stick.name()));
                } else {
                    loops.add(loop(pull, found.get(), flight.loop(pack, found.get())));
                }
            }
        }
        return new Pulls(loops, gains(pulls, loops), none);
    }

    private Optional<Message> noFlight(double speed) {
        Outcome outcome = flight.descent(pack, stall, speed).outcome();
        Quantity at = new Quantity(speed, Dimension.SPEED);
        return switch (outcome) {
            case STEADY -> Optional.empty();
            case TOO_SLOW ->
                Optional.of(Message.of("note.loop.too-slow", at, new Quantity(stall.speed(), Dimension.SPEED)));
            case TOO_FAST -> Optional.of(Message.of("note.loop.too-fast", at));
            case ELEVATOR_SHORT -> Optional.of(Message.of("note.loop.elevator", at));
            case NOT_FOUND -> Optional.of(Message.of("note.loop.no-flight", at));
        };
    }

    /** The model's pull sticks that work here; behind one with flaps the same without them, where the model has none. */
    private List<Pull> pulls() {
        List<Stick.Pull> sticks = LoopAnswer.sticks(model, setUp);
        List<Pull> pulls = new ArrayList<>();
        for (Stick.Pull stick : sticks) {
            pulls.add(new Pull(stick, false));
            if (movesFlaps(stick) && sticks.stream().noneMatch(other -> isPlain(other, stick))) {
                pulls.add(new Pull(new Stick.Pull(stick.name(), Map.of(), stick.elevator(), stick.in()), true));
            }
        }
        return pulls;
    }

    private static boolean movesFlaps(Stick.Pull stick) {
        return stick.deflections().values().stream().anyMatch(d -> d != 0);
    }

    private static boolean isPlain(Stick.Pull stick, Stick.Pull flapped) {
        return !movesFlaps(stick) && Math.abs(stick.elevator() - flapped.elevator()) < SAME;
    }

    private List<Gain> gains(List<Pull> pulls, List<Loop> loops) {
        List<Gain> gains = new ArrayList<>();
        for (Pull flapped : pulls) {
            if (!movesFlaps(flapped.stick)) {
                continue;
            }
            pulls.stream()
                    .filter(other -> isPlain(other.stick, flapped.stick))
                    .findFirst()
                    .ifPresent(plain -> loops.stream()
                            .filter(loop -> is(loop, flapped))
                            .forEach(with -> loops.stream()
                                    .filter(loop -> is(loop, plain) && loop.speed() == with.speed())
                                    .forEach(without -> gains.add(gain(with, without)))));
        }
        return gains;
    }

    private static boolean is(Loop loop, Pull pull) {
        return loop.stick().equals(pull.stick.name()) && loop.withoutFlaps() == pull.withoutFlaps;
    }

    private Gain gain(Loop with, Loop without) {
        return new Gain(
                with.stick(),
                without.stick(),
                with.speed(),
                bands.around("loopRadius", with.radius()),
                bands.around("loopRadius", without.radius()));
    }

    private Loop loop(Pull from, PullUp pull, LoopPath path) {
        return new Loop(
                from.stick.name(),
                from.withoutFlaps,
                pull.speed(),
                pull.wing(),
                pull.elevator(),
                pull.tail(),
                pull.limit(),
                pull.load(),
                pull.radius(),
                pull.turnRadius(),
                pull.angleLeft(),
                pull.stallShare(),
                path.topSpeed(),
                path.endSpeed(),
                path.height(),
                path.way().stream()
                        .map(spot -> new PathPoint(spot.along(), spot.height()))
                        .toList(),
                powered.flatMap(open -> open.at(from.stick, pull.speed())));
    }
}
