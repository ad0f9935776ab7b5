package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.flight.SurfaceMove;
import throwline.flight.SurfaceMove.Moment;
import throwline.flight.SurfaceMover;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.study.Handling.End;
import throwline.study.Handling.Mix;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Suggested;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** The surfaces on their way between the reference set-up and another, with one pack. */
final class MoveStudy {

    /** Speed at which surfaces are lowered over the reference's stall speed (PRACTICE: slow down first). */
    private static final double LOWERED_AT = 1.5;

    /** Shares of the elevator's whole change that are looked at. */
    private static final double[] SHARES = {0, MoveRule.START, 1};

    /** The time at which mixes are compared, s (PRACTICE: one to two seconds, methods manual 17.1). */
    private static final double USUAL_TIME = 1.5;

    /** Every so many moments of a run are kept: 0.05 s apart. */
    private static final int KEPT = 5;

    private static final double SAME_SHARE = 1e-6;

    private final Airframe airframe;
    private final Pack pack;
    private final Side reference;
    private final Side other;

    /**
     * One of both ends.
     *
     * @param flight in this set-up
     * @param setUp it
     * @param stall its stall
     */
    record Side(Flight flight, SetUp setUp, Stall stall) {}

    MoveStudy(Airframe airframe, Pack pack, Side reference, Side other) {
        this.airframe = airframe;
        this.pack = pack;
        this.reference = reference;
        this.other = other;
    }

    /** What happens, or why nothing is known. */
    record Found(Optional<Moves> moves, Optional<Message> why) {}

    Found moves(FlyQuestion question) {
        double usual = LOWERED_AT * reference.stall.speed();
        double speed = question.lowerSpeed().orElse(usual);
        Optional<Message> why = why(reference, speed).or(() -> why(other, speed));
        Optional<SurfaceMover> found = mover(speed);
        if (why.isPresent() || found.isEmpty()) {
            return new Found(Optional.empty(), why);
        }
        SurfaceMover mover = found.get();
        Optional<Double> change = mover.wholeChange(speed);
        if (change.isEmpty()) {
            Quantity at = new Quantity(speed, Dimension.SPEED);
            return new Found(Optional.empty(), Optional.of(Message.of("note.move.no-flight", other.setUp.name(), at)));
        }
        List<Mix> mixes = mixes(change.get(), question.mixed().or(this::programmed));
        List<Suggested> suggested = mixes.stream()
                .filter(mix -> mix.share() < 1 || mix.own())
                .map(mix -> new Suggested(mix, mover.shortestTime(speed, mix.elevator(), Handling.BALLOON)))
                .toList();
        double time = question.flapTime().orElseGet(() -> time(suggested));
        List<Move> lowering = runs(mixes, mix -> mover.lower(speed, time, mix.elevator()));
        // Without its flaps it has to fly on: no slower than it is approached without them.
        double raiseSpeed = Math.max(other.stall.approachSpeed(), reference.stall.approachSpeed());
        // Far from the speed of an approach the angles solved are others: going back is worked out near its own speed.
        Optional<SurfaceMover> back = speed == usual ? found : mover(usual);
        List<Move> raising = back.map(m -> runs(mixes, mix -> m.raise(raiseSpeed, time, mix.elevator())))
                .orElse(List.of());
        return new Found(
                Optional.of(new Moves(
                        speed,
                        lowering,
                        suggested,
                        raiseSpeed,
                        raising,
                        other.stall.speed(),
                        reference.stall.speed(),
                        new Handling.Terms(
                                SurfaceMover.QUICKEST,
                                SurfaceMover.SLOWEST,
                                SurfaceMover.REACTION,
                                SurfaceMover.HAND))),
                Optional.empty());
    }

    /** The mix that the model file programs already. */
    private Optional<FlyQuestion.Mixed> programmed() {
        double angle = other.setUp.elevator() - reference.setUp.elevator();
        return angle == 0 ? Optional.empty() : Optional.of(new FlyQuestion.Throw(angle));
    }

    /** None, half, all, and the person's own where it is another. */
    private static List<Mix> mixes(double change, Optional<FlyQuestion.Mixed> mixed) {
        List<Mix> mixes = new ArrayList<>();
        for (double share : SHARES) {
            mixes.add(new Mix(share, share * change, false));
        }
        mixed.map(own -> own(change, own))
                .filter(own -> mixes.stream().noneMatch(mix -> Math.abs(mix.elevator() - own.elevator()) < SAME_SHARE))
                .ifPresent(mixes::add);
        return mixes;
    }

    private static Mix own(double change, FlyQuestion.Mixed mixed) {
        if (mixed instanceof FlyQuestion.Share part) {
            return new Mix(part.share(), part.share() * change, true);
        }
        double angle = ((FlyQuestion.Throw) mixed).angle();
        return new Mix(change == 0 ? 0 : angle / change, angle, true);
    }

    /** Long enough for the mix to start with, and not quicker than usual. */
    private static double time(List<Suggested> suggested) {
        return suggested.stream()
                .filter(each -> each.mix().share() == MoveRule.START)
                .findFirst()
                .flatMap(Suggested::time)
                .map(time -> Math.max(time, USUAL_TIME))
                .orElse(SurfaceMover.SLOWEST);
    }

    private Optional<SurfaceMover> mover(double speed) {
        Optional<Attitude> from =
                reference.flight.descent(pack, reference.stall, speed).steady();
        Optional<Attitude> to = other.flight.descent(pack, other.stall, speed).steady();
        return from.flatMap(a -> to.map(b -> new SurfaceMover(airframe, reference.setUp, other.setUp, pack, a, b)));
    }

    private Optional<Message> why(Side side, double speed) {
        Descent.Outcome outcome = side.flight.descent(pack, side.stall, speed).outcome();
        Quantity at = new Quantity(speed, Dimension.SPEED);
        String name = side.setUp.name();
        return switch (outcome) {
            case STEADY -> Optional.empty();
            case TOO_SLOW ->
                Optional.of(
                        Message.of("note.move.too-slow", name, at, new Quantity(side.stall.speed(), Dimension.SPEED)));
            case TOO_FAST -> Optional.of(Message.of("note.move.too-fast", name, at));
            case ELEVATOR_SHORT -> Optional.of(Message.of("note.move.elevator", name, at));
            case NOT_FOUND -> Optional.of(Message.of("note.move.no-flight", name, at));
        };
    }

    private static List<Move> runs(List<Mix> mixes, Function<Mix, Optional<SurfaceMove>> run) {
        return mixes.stream()
                .flatMap(mix -> run.apply(mix).map(found -> move(mix, found)).stream())
                .toList();
    }

    private static Move move(Mix mix, SurfaceMove run) {
        List<Moment> all = run.history();
        List<Moment> kept = IntStream.range(0, all.size())
                .filter(i -> i % KEPT == 0 || i == all.size() - 1)
                .mapToObj(all::get)
                .toList();
        return new Move(
                run.time(),
                mix,
                run.followed() ? End.FOLLOWED : run.lostNoseUp() ? End.LOST_UP : End.LOST_DOWN,
                run.balloon(),
                run.drop(),
                run.mostLoad(),
                run.leastLoad(),
                run.slowest(),
                run.fastest(),
                run.comesBack(),
                run.heightLost(),
                kept);
    }
}
