package throwline.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.flight.ElevatorBreakdown;
import throwline.flight.PathPoint;
import throwline.flight.PullUp.Limit;
import throwline.flight.SurfaceMove.Moment;
import throwline.flight.SurfaceMove.Return;
import throwline.linkage.ServoBlowBack.Hold;
import throwline.model.Model;
import throwline.model.Propeller;
import throwline.study.BlowBackResult;
import throwline.study.Comparison;
import throwline.study.EdgeThrow;
import throwline.study.FlyResult;
import throwline.study.Handling;
import throwline.study.Handling.End;
import throwline.study.Handling.Gain;
import throwline.study.Handling.Loop;
import throwline.study.Handling.Mix;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Suggested;
import throwline.study.Headline;
import throwline.study.Headline.Basis;
import throwline.study.SetUpResult;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * Fixed results of one set-up in depth for tests of wording and layout. Every number is invented; nothing here was worked
 * out by the program and nothing checks its physics.
 */
public final class FlyFixture {

    private static final double DEG = Math.PI / 180;

    private FlyFixture() {}

    /** All is found: loops with and without flaps, four mixes of which one is lost, a way back that does not always work. */
    public static FlyResult airbrake() {
        return of(Fixture.orchard(), 3, handling());
    }

    /** The set-up that others are compared with, asked for moves; no loop was found, nothing known of the balance. */
    public static FlyResult reference() {
        Message loop =
                Message.of("note.loop.too-slow", new Quantity(7, Dimension.SPEED), new Quantity(9.5, Dimension.SPEED));
        return of(
                Fixture.orchard(),
                0,
                new Handling(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(loop),
                        Optional.empty(),
                        Optional.of(Message.of("note.move.reference", "clean"))));
    }

    /** Slow going back, servos too weak for the speed, nothing pitches away, no time is quick enough. */
    public static FlyResult slow() {
        List<Move> lowering = List.of(
                move(new Mix(0, 0, false), End.FOLLOWED, Return.NEVER_LEFT, 3.2, 8.4),
                move(new Mix(0.5, -1.5 * DEG, false), End.FOLLOWED, Return.NEVER_LEFT, 2.1, 9.4),
                move(new Mix(1, -3 * DEG, false), End.FOLLOWED, Return.NEVER_LEFT, 0.4, 10.4));
        List<Suggested> suggested = lowering.stream()
                .limit(2)
                .map(run -> new Suggested(run.mix(), Optional.empty()))
                .toList();
        Moves moves = new Moves(24, lowering, suggested, 9.9, lowering, 7.6, 9.5, new Handling.Terms(0.5, 4, 1, 0.5));
        return of(
                Fixture.orchard(),
                2,
                new Handling(List.of(), List.of(), List.of(), List.of(), Optional.of(moves), Optional.empty()));
    }

    private static BlowBackResult.Row standing() {
        return new BlowBackResult.Row(
                "flaps",
                "",
                SetUpResult.Side.BOTH,
                35 * DEG,
                0.072,
                35 * DEG,
                1,
                true,
                List.of(
                        new BlowBackResult.Point(11.5, 34 * DEG, straight(34), Optional.of(33.5 * DEG), Hold.HELD),
                        new BlowBackResult.Point(15.8, 33 * DEG, straight(33), Optional.of(32.2 * DEG), Hold.HELD)));
    }

    private static double straight(double degrees) {
        return new EdgeThrow(0.072).distance(degrees * DEG);
    }

    /** Drag of a parabola, a thrust that falls with speed. */
    private static List<FlyResult.LevelPoint> level(Headline stall) {
        if (!(stall instanceof Headline.Known known)) {
            return List.of();
        }
        return IntStream.range(0, 9)
                .mapToObj(k -> {
                    double speed = known.value() * (1.1 + 0.15 * k);
                    double thrust = 0.016 * speed * speed + 160 / (speed * speed);
                    double throttle = 0.5 + 0.0625 * k;
                    return new FlyResult.LevelPoint(
                            speed, throttle, thrust, thrust + 1.4 * (8 - k), 4 + 1.5 * k, 2880 - 280 * k);
                })
                .toList();
    }

    private static FlyResult of(CompareAnswer answer, int setUp, Handling handling) {
        Comparison comparison = answer.comparison();
        Model model = comparison.model();
        Comparison.PackResult pack = comparison.packs().get(0);
        SetUpResult glance = pack.setUps().get(setUp);
        boolean clean = glance.setUp().isClean();
        return new FlyResult(
                model,
                pack.pack(),
                glance,
                Optional.of(new FlyResult.Balance(
                        Optional.of(clean ? -0.02 : 0.11),
                        Optional.of(0.117),
                        5.7 * DEG,
                        19,
                        known(3 * DEG, 2 * DEG),
                        clean
                                ? Optional.empty()
                                : Optional.of(new ElevatorBreakdown(-6 * DEG, 2 * DEG, DEG, 0, 7 * DEG, 0.3 * DEG)))),
                List.of(new FlyResult.Turn(45 * DEG, known(10.2, 0.6), clean)),
                List.of(new FlyResult.RollDetail(
                        "low rates",
                        known(77 * DEG, 15 * DEG),
                        Optional.of(1.2),
                        Optional.of(-0.01),
                        false,
                        Optional.of(8.6),
                        Optional.of(-0.09),
                        Optional.of(34 * DEG))),
                Optional.of(new FlyResult.Descents(
                        2,
                        Optional.of(13 * DEG),
                        13.7,
                        Optional.of(14 * DEG),
                        Optional.of(13.7),
                        List.of(new FlyResult.OtherPropeller(Propeller.Shut.TURNING, known(15 * DEG, 3 * DEG))))),
                List.of(new FlyResult.RollPoint(9, 60 * DEG), new FlyResult.RollPoint(18, 130 * DEG)),
                level(glance.stallSpeed()),
                handling,
                new BlowBackResult(11.5, 15.8, true, List.of(standing())),
                List.of(new FlyResult.Sensitivity("weight", "", "stall", new Quantity(0.04, Dimension.SPEED))),
                List.of());
    }

    private static Handling handling() {
        List<Loop> loops = List.of(
                loop("full up", false, 15, 2.6, Limit.ELEVATOR),
                loop("full up", false, 25, 6.5, Limit.WING),
                loop("with camber", false, 15, 2.7, Limit.ELEVATOR),
                loop("with camber", false, 25, 7.4, Limit.WING),
                loop("five degrees", false, 15, 2.0, Limit.TAIL),
                loop("five degrees", true, 15, 2.4, Limit.ELEVATOR));
        List<Gain> gains = List.of(
                new Gain("with camber", "full up", 15, radius(13.5), radius(14.3)),
                new Gain("with camber", "full up", 25, radius(10.0), radius(11.6)),
                new Gain("five degrees", "five degrees", 15, radius(22.9), radius(16.4)));
        Message fast = Message.of("note.loop.too-fast", new Quantity(35, Dimension.SPEED));
        double whole = 9 * DEG;
        Mix none = new Mix(0, 0, false);
        Mix half = new Mix(0.5, whole / 2, false);
        Mix all = new Mix(1, whole, false);
        Mix own = new Mix(0.3, 0.3 * whole, true);
        Moves moves = new Moves(
                13.6,
                List.of(
                        move(none, End.LOST_UP, Return.LOST, 5.6, 7.2),
                        move(half, End.FOLLOWED, Return.NEVER_LEFT, 4.6, 8.3),
                        move(all, End.FOLLOWED, Return.NEVER_LEFT, 0.7, 11.3),
                        move(own, End.FOLLOWED, Return.NEVER_LEFT, 5.2, 7.9)),
                List.of(
                        new Suggested(none, Optional.empty()),
                        new Suggested(half, Optional.of(0.5)),
                        new Suggested(own, Optional.of(1.8))),
                11.5,
                List.of(
                        move(none, End.LOST_DOWN, Return.LOST, 0, 11),
                        move(half, End.FOLLOWED, Return.BACK, 0, 10.7),
                        move(all, End.FOLLOWED, Return.NEVER_LEFT, 0.3, 10.4),
                        move(own, End.FOLLOWED, Return.NOT_YET, 0, 10.9)),
                8.9,
                9.1,
                new Handling.Terms(0.5, 4, 1, 0.5));
        return new Handling(List.of(), loops, gains, List.of(fast), Optional.of(moves), Optional.empty());
    }

    private static Loop loop(String stick, boolean withoutFlaps, double speed, double load, Limit limit) {
        boolean over = load > 5;
        return new Loop(
                stick,
                withoutFlaps,
                speed,
                limit == Limit.WING ? load : 1.2 * load,
                limit == Limit.WING ? Optional.empty() : Optional.of(limit == Limit.ELEVATOR ? load : 1.1 * load),
                limit == Limit.TAIL ? Optional.of(load) : Optional.empty(),
                limit,
                load,
                speed * speed / (9.80665 * (load - 1)),
                speed * speed / (9.80665 * Math.sqrt(load * load - 1)),
                limit == Limit.WING ? 0 : 5.6 * DEG,
                Optional.of(limit == Limit.WING ? 0.9 : 1.3),
                over ? Optional.of(8.2) : Optional.empty(),
                over ? Optional.of(16.1) : Optional.empty(),
                over ? 24 : 9,
                List.of(new PathPoint(0, 0), new PathPoint(8, 4), new PathPoint(6, 9)),
                limit == Limit.TAIL ? Optional.empty() : Optional.of(atFull(speed, 1.05 * load, limit)));
    }

    /** Slow ones do not get over the top, or may not. */
    private static Handling.LoopAtFull atFull(double speed, double load, Limit limit) {
        Headline top = load < 2.75
                ? new Headline.Unknown("why.not-over")
                : new Headline.Known(0.4 * speed, load < 2.8 ? 0 : 0.3 * speed, 0.5 * speed, Headline.Basis.ASSUMED);
        double radius = speed * speed / (9.80665 * (load - 1));
        return new Handling.LoopAtFull(
                load,
                limit,
                new Headline.Known(radius, 0.8 * radius, 1.2 * radius, Headline.Basis.ASSUMED),
                top,
                top instanceof Headline.Known ? Optional.of(0.8 * speed) : Optional.empty(),
                1.7 * radius,
                List.of(new PathPoint(0, 0), new PathPoint(6, 10)));
    }

    private static Move move(Mix mix, End end, Return comesBack, double balloon, double slowest) {
        double until = end == End.FOLLOWED ? 4.5 : 2;
        List<Moment> history = new ArrayList<>();
        for (double time = 0; time <= until; time += 0.5) {
            double swing = Math.sin(time);
            history.add(new Moment(
                    time,
                    Math.min(1, time / 1.5),
                    -2 * time + balloon * swing,
                    balloon * swing,
                    0,
                    0,
                    13.6 - (13.6 - slowest) * swing,
                    1 + 0.06 * balloon * Math.sin(2 * time)));
        }
        return new Move(
                1.5,
                mix,
                end,
                balloon,
                0,
                1 + 0.06 * balloon,
                1 - 0.06 * balloon,
                slowest,
                13.6,
                comesBack,
                comesBack == Return.BACK ? Optional.of(7.4) : Optional.empty(),
                history);
    }

    private static Headline.Known radius(double value) {
        return new Headline.Known(value, 0.8 * value, 1.2 * value, Basis.ASSUMED, 0.8);
    }

    private static Headline known(double value, double width) {
        return new Headline.Known(value, value - width, value + width, Basis.ASSUMED, 0.8);
    }
}
