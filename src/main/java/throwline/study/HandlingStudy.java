package throwline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.GroundLadder;
import throwline.flight.LoopPath;
import throwline.flight.PullUp;
import throwline.flight.Stall;
import throwline.flight.SurfaceMove;
import throwline.flight.SurfaceMover;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.study.Handling.Limit;
import throwline.study.Handling.Loop;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Rank;

/** Landings of all set-ups in a row, tight pulls, and surfaces on the move, with one pack. */
final class HandlingStudy {

    /** Entry speeds of a loop over the reference's stall speed, where none are given (PRACTICE). */
    private static final double[] ENTRIES = {1.8, 2.4, 3.0};

    /** Speed at which surfaces are lowered over the reference's stall speed (PRACTICE: slow down first). */
    private static final double LOWERED_AT = 1.5;

    /** Times that surfaces may take, s. */
    private static final double[] TIMES = {0.5, 1, 1.5, 2, 3, 4};

    private static final double[] MIXES = {0, 0.5, 1};

    /** A load above this is a balloon (TRADE-FACTS 4, common practice). */
    private static final double BALLOON = 1.3;

    /** A pull below this load bends no path worth a word. */
    private static final double LEAST = 1.05;

    /** The time at which mixes are compared, s (TRADE-FACTS 1: one to two seconds). */
    private static final double USUAL_TIME = 1.5;

    private final Airframe airframe;
    private final Model model;
    private final Pack pack;
    private final Bands bands;

    HandlingStudy(Airframe airframe, Pack pack, Bands bands) {
        this.airframe = airframe;
        this.pack = pack;
        this.bands = bands;
        model = airframe.model();
    }

    /** Entry speeds where none are given: whole metres a second. */
    static List<Double> entries(Stall reference) {
        return Arrays.stream(ENTRIES)
                .mapToObj(ratio -> Math.rint(ratio * reference.speed()))
                .toList();
    }

    /** Landings of all set-ups, shortest first; those without a landing are left out. */
    List<Rank> ranking(GroundLadder ladder, SetUpResult known) {
        return model.setUps().parallelStream()
                .flatMap(setUp -> {
                    FieldAnswer field = setUp.equals(known.setUp()) ? known.field() : field(ladder, setUp);
                    return field.landing() instanceof Headline.Known landing
                            ? Stream.of(new Rank(setUp.name(), landing, field.landingInWind()))
                            : Stream.empty();
                })
                .sorted(Comparator.comparingDouble(rank -> rank.landing().value()))
                .toList();
    }

    private FieldAnswer field(GroundLadder ladder, SetUp setUp) {
        Flight flight = new Flight(airframe, setUp);
        FieldAnswers answers = new FieldAnswers(ladder, model.field(), setUp, bands);
        return flight.stall(pack)
                .map(stall -> answers.of(
                        flight,
                        pack,
                        stall,
                        flight.descent(pack, stall, SetUpAnswer.APPROACH_OVER_STALL * stall.speed())))
                .orElseGet(() -> FieldAnswer.none(new Headline.Unknown("why.no-stall")));
    }

    /** The tightest pulls of all pull sticks that work in a set-up. */
    List<Loop> loops(Flight flight, SetUp setUp, Stall stall, List<Double> speeds) {
        List<Stick.Pull> sticks = model.sticks().stream()
                .filter(stick -> stick instanceof Stick.Pull && stick.worksIn(setUp))
                .map(stick -> (Stick.Pull) stick)
                .toList();
        List<Stick.Pull> pulls = sticks.isEmpty() ? List.of(wholeTravel()) : sticks;
        List<Loop> loops = new ArrayList<>();
        for (Stick.Pull stick : pulls) {
            for (double speed : speeds) {
                flight.pull(stick, pack, stall, speed)
                        .filter(pull -> pull.load() > LEAST)
                        .ifPresent(pull -> loops.add(loop(stick.name(), pull, flight.loop(pack, pull))));
            }
        }
        return loops;
    }

    /** As far up as the elevator goes, from wherever it is trimmed. */
    private Stick.Pull wholeTravel() {
        double travel =
                model.tail().elevator().travelUp() + model.tail().elevator().travelDown();
        return new Stick.Pull("", Map.of(), -travel, List.of());
    }

    private static Loop loop(String stick, PullUp pull, LoopPath path) {
        return new Loop(
                stick,
                pull.speed(),
                pull.wing(),
                pull.elevator(),
                pull.tail(),
                Limit.valueOf(pull.limit().name()),
                pull.load(),
                pull.radius(),
                pull.turnRadius(),
                pull.angleLeft(),
                pull.stallShare(),
                path.topSpeed(),
                path.endSpeed(),
                path.height(),
                path.way().stream()
                        .map(spot -> new FieldAnswer.Spot(spot.along(), spot.height()))
                        .toList());
    }

    /** Surfaces on their way between the reference and a set-up; empty where one has no steady descent at the speed. */
    Optional<Moves> moves(Flight reference, Stall referenceStall, Flight flight, SetUp setUp, Stall stall) {
        double lowerSpeed = LOWERED_AT * referenceStall.speed();
        double raiseSpeed = SetUpAnswer.APPROACH_OVER_STALL * stall.speed();
        Optional<SurfaceMover> found = mover(reference, referenceStall, flight, setUp, stall, lowerSpeed);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        SurfaceMover mover = found.get();
        Optional<Double> suggested = Arrays.stream(TIMES)
                .boxed()
                .filter(time -> mover.lower(lowerSpeed, time, 0)
                        .filter(run -> run.mostLoad() <= BALLOON)
                        .isPresent())
                .findFirst();
        double time = suggested.map(t -> Math.max(t, USUAL_TIME)).orElse(TIMES[TIMES.length - 1]);
        List<Move> lowering = runs(mix -> mover.lower(lowerSpeed, time, mix));
        List<Move> raising = runs(mix -> mover.raise(raiseSpeed, time, mix));
        return lowering.isEmpty()
                ? Optional.empty()
                : Optional.of(new Moves(lowerSpeed, lowering, suggested, raiseSpeed, raising, referenceStall.speed()));
    }

    private Optional<SurfaceMover> mover(
            Flight reference, Stall referenceStall, Flight flight, SetUp setUp, Stall stall, double speed) {
        Optional<Attitude> from = reference.descent(pack, referenceStall, speed).steady();
        Optional<Attitude> to = flight.descent(pack, stall, speed).steady();
        return from.flatMap(a -> to.map(b -> new SurfaceMover(airframe, model.reference(), setUp, pack, a, b)));
    }

    private static List<Move> runs(DoubleFunction<Optional<SurfaceMove>> run) {
        return Arrays.stream(MIXES)
                .mapToObj(run)
                .flatMap(Optional::stream)
                .map(HandlingStudy::move)
                .toList();
    }

    private static Move move(SurfaceMove run) {
        return new Move(
                run.time(), run.mix(), run.balloon(), run.drop(), run.mostLoad(), run.leastLoad(), run.slowest());
    }
}
