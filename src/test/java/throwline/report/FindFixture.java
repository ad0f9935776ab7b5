package throwline.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.flight.PullUp;
import throwline.flight.TakeOff;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.sizing.CandidateFlight;
import throwline.sizing.FoundClimb;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundTakeOff;
import throwline.sizing.FoundThrow;
import throwline.sizing.Limit;
import throwline.sizing.LoopHelp;
import throwline.sizing.MixCurve;
import throwline.sizing.PoweredWants;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;
import throwline.sizing.RollHelp;
import throwline.sizing.SetUpWants;
import throwline.sizing.SetUpWants.WantedDescent;
import throwline.sizing.SetUpWants.WantedRoll;
import throwline.study.Comparison;
import throwline.study.FindQuestion;
import throwline.study.FindResult;
import throwline.study.FindResult.ClimbFound;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.LoopFound;
import throwline.study.FindResult.RollFound;
import throwline.study.FindResult.SetUpFound;
import throwline.study.FindResult.TakeOffFound;
import throwline.study.FindResult.ThrowBand;
import throwline.study.FindResult.TrimFound;
import throwline.study.Headline;
import throwline.study.Headline.Basis;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Fixed answers of searches, for tests of wording and layout. Every number is invented. */
public final class FindFixture {

    private static final double DEG = Math.PI / 180;
    private static final Comparison ORCHARD = Fixture.orchard().comparison();
    private static final Model MODEL = ORCHARD.model();
    private static final SetUp CLEAN = MODEL.setUps().get(0);

    private FindFixture() {}

    /** Everything asked for at once, everything found. */
    public static FindResult allFound() {
        CandidateFlight answer = trial(46, -4, 9.1, 15, Optional.empty());
        FoundSetUp found = new FoundSetUp(
                answer,
                true,
                List.of(),
                trial(0, 0, 9.8, 6.5, Optional.empty()),
                trial(60, -12.5, 9.4, 18.4, Optional.empty()),
                List.of(Limit.FLAPS_DOWN, Limit.ROLL_RESERVE_UP),
                List.of(
                        new FoundSetUp.OneDegree(FoundSetUp.Moved.FLAPS, DEG, -0.004, Optional.of(0.21 * DEG)),
                        new FoundSetUp.OneDegree(FoundSetUp.Moved.AILERONS, -DEG, 0.03, Optional.of(0.12 * DEG))),
                List.of(),
                FoundSetUp.Moved.FLAPS,
                Optional.of(130 * DEG),
                29);
        SetUpFound setUp = new SetUpFound(
                found,
                around(9.1, 0.5),
                Optional.of(around(15 * DEG, 3 * DEG)),
                Optional.of(around(7 * DEG, 2.8 * DEG)),
                Optional.of(new ThrowBand(31 * DEG, 60 * DEG, false, true)));
        SetUpWants wants =
                new SetUpWants(Optional.empty(), Optional.of(new WantedDescent(15 * DEG, 12)), Optional.empty());
        FindQuestion question = new FindQuestion(
                ORCHARD.packs().get(0).pack(),
                "airbrake",
                Optional.of(wants),
                Optional.of(new WantedRoll(60 * DEG, 12)),
                Optional.of(new FindQuestion.LevelTrim(Optional.empty(), Optional.of(12.0), Optional.empty())),
                Optional.of(new FindQuestion.RollHelpWanted(Optional.of(12.0))),
                Optional.of(new FindQuestion.LoopWanted(Optional.of(19.0))),
                new PoweredWants(Optional.of(10.5), Optional.of(new WantedClimb(12 * DEG, As.ANGLE))));
        Comparison flown =
                new Comparison(MODEL, ORCHARD.density(), List.of(ORCHARD.packs().get(0)), List.of());
        return new FindResult(
                question,
                MODEL,
                ORCHARD.packs().get(0).pack(),
                Optional.of(setUp),
                Optional.of(roll(true)),
                Optional.of(trim(7, 2.8, Optional.empty())),
                Optional.of(help()),
                Optional.of(loop()),
                Optional.of(takeOff()),
                Optional.of(new ClimbFound(
                        new FoundClimb(
                                CLEAN,
                                Optional.of(climb(1, 20)),
                                Optional.of(climb(0.78, 12)),
                                Optional.of(41 * DEG),
                                false,
                                Optional.of(new FoundClimb.Trial(0, CLEAN, climb(1, 20))),
                                List.of()),
                        around(4.1, 1.2),
                        around(20 * DEG, 9 * DEG))),
                List.of(stick()),
                Optional.of(flown),
                List.of(Message.of("note.find.near-stall", speed(11), new Quantity(1.21, Dimension.NUMBER))));
    }

    /** The same, come down at this many times the stall speed of what was found. */
    public static FindResult foundAt(double ratio) {
        FindResult all = allFound();
        double stall = all.setUp().orElseThrow().found().trial().stallSpeed();
        return with(all, ratio * stall, all.setUp().orElseThrow());
    }

    /** The same, with another change of the elevator. */
    public static FindResult elevatorChangesBy(double change) {
        FindResult all = allFound();
        SetUpFound found = all.setUp().orElseThrow();
        return with(
                all,
                12,
                new SetUpFound(
                        found.found(),
                        found.stallSpeed(),
                        found.descentAngle(),
                        Optional.of(around(change, 2.8 * DEG)),
                        found.throwBand()));
    }

    private static FindResult with(FindResult all, double speed, SetUpFound found) {
        FindQuestion q = all.question();
        SetUpWants wants =
                new SetUpWants(Optional.empty(), Optional.of(new WantedDescent(15 * DEG, speed)), Optional.empty());
        FindQuestion other = new FindQuestion(
                q.pack(),
                q.name(),
                Optional.of(wants),
                q.roll(),
                q.levelTrim(),
                q.rollHelp(),
                q.tightestLoop(),
                q.powered());
        return new FindResult(
                other,
                all.model(),
                all.pack(),
                Optional.of(found),
                all.roll(),
                all.levelTrim(),
                all.rollHelp(),
                all.loop(),
                all.takeOff(),
                all.climb(),
                all.sticks(),
                all.flown(),
                all.notes());
    }

    /** Everything asked for at once, nothing found. */
    public static FindResult nothingFound() {
        CandidateFlight closest = trial(60, 9, 8.6, Double.NaN, Optional.empty());
        FoundSetUp found = new FoundSetUp(
                closest,
                false,
                List.of(Limit.FLAPS_DOWN, Limit.ROLL_RESERVE_DOWN),
                trial(0, -12.5, 10.1, Double.NaN, Optional.empty()),
                closest,
                List.of(Limit.FLAPS_DOWN, Limit.ROLL_RESERVE_DOWN),
                List.of(new FoundSetUp.OneDegree(FoundSetUp.Moved.AILERONS, DEG, -0.021, Optional.empty())),
                List.of(),
                FoundSetUp.Moved.FLAPS,
                Optional.empty(),
                16);
        SetUpFound setUp =
                new SetUpFound(found, around(8.6, 0.5), Optional.empty(), Optional.empty(), Optional.empty());
        FindQuestion question = new FindQuestion(
                ORCHARD.packs().get(0).pack(),
                "slow",
                Optional.of(new SetUpWants(Optional.of(7.0), Optional.empty(), Optional.empty())),
                Optional.of(new WantedRoll(300 * DEG, 12)),
                Optional.of(new FindQuestion.LevelTrim(
                        Optional.of(MODEL.setUps().get(1)), Optional.of(9.0), Optional.empty())),
                Optional.of(new FindQuestion.RollHelpWanted(Optional.empty())),
                Optional.of(new FindQuestion.LoopWanted(Optional.empty())),
                new PoweredWants(Optional.of(2.0), Optional.of(new WantedClimb(8, As.RATE))));
        return new FindResult(
                question,
                MODEL,
                ORCHARD.packs().get(0).pack(),
                Optional.of(setUp),
                Optional.of(roll(false)),
                Optional.of(trim(
                        1.5, 2, Optional.of(Message.of("note.find.mix-too-slow", speed(9), speed(9.8), speed(10.3))))),
                Optional.of(new HelpFound(
                        CLEAN,
                        stick(),
                        Optional.empty(),
                        new Headline.Unknown("why.no-roll"),
                        new Headline.Unknown("why.no-roll"))),
                Optional.of(new LoopFound(
                        CLEAN,
                        Optional.empty(),
                        new Headline.Unknown("why.no-loop"),
                        new Headline.Unknown("why.no-loop"),
                        LoopFound.Round.NEVER)),
                Optional.of(grounded()),
                Optional.of(tooWeak()),
                List.of(),
                Optional.empty(),
                List.of());
    }

    private static TakeOffFound grounded() {
        return new TakeOffFound(
                Optional.of(new FoundTakeOff(
                        List.of(run(0, TakeOff.Outcome.WILL_NOT_ROLL, 0), run(30, TakeOff.Outcome.WILL_NOT_ROLL, 0)),
                        run(0, TakeOff.Outcome.WILL_NOT_ROLL, 0),
                        false,
                        List.of(Limit.FULL_THROTTLE))),
                new Headline.Unknown("why.no-roll-out"),
                new Headline.Unknown("why.no-roll-out"),
                new Headline.Unknown("why.no-roll-out"),
                Optional.empty());
    }

    private static ClimbFound tooWeak() {
        return new ClimbFound(
                new FoundClimb(
                        CLEAN,
                        Optional.of(climb(1, 20)),
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        Optional.of(new FoundClimb.Trial(10 * DEG, CLEAN, climb(1, 21))),
                        List.of(Limit.FULL_THROTTLE)),
                around(4.1, 1.2),
                around(20 * DEG, 9 * DEG));
    }

    private static TakeOffFound takeOff() {
        FoundTakeOff.Trial found = run(12, TakeOff.Outcome.FLIES, 10.4);
        return new TakeOffFound(
                Optional.of(
                        new FoundTakeOff(List.of(run(0, TakeOff.Outcome.FLIES, 11.7), found), found, true, List.of())),
                around(10.4, 3.1),
                around(38, 11),
                around(11.7, 3.5),
                Optional.of(new ThrowBand(0, 60 * DEG, false, true)));
    }

    private static FoundTakeOff.Trial run(double flap, TakeOff.Outcome outcome, double run) {
        return new FoundTakeOff.Trial(
                flap * DEG,
                new SetUp("airbrake take-off", Map.of("flaps", flap * DEG), 0),
                new TakeOff(outcome, 10.3, run, 1.9, 2, 0.3));
    }

    private static FoundClimb.Climb climb(double throttle, double angle) {
        return new FoundClimb.Climb(throttle, 12, angle * DEG, 14);
    }

    private static Quantity speed(double speed) {
        return new Quantity(speed, Dimension.SPEED);
    }

    private static CandidateFlight trial(
            double flap, double aileron, double stall, double angle, Optional<Limit> fault) {
        return new CandidateFlight(
                flap * DEG,
                aileron * DEG,
                new SetUp("airbrake", Map.of("flaps", flap * DEG, "ailerons", aileron * DEG), 0),
                Optional.of(new CandidateFlight.StallSpeeds(stall, stall + 0.1, stall - 0.1, false)),
                angle * DEG,
                Optional.of(3 * DEG),
                fault);
    }

    private static Stick.Roll stick() {
        return new Stick.Roll("airbrake", Map.of("ailerons", new Stick.Throws(11 * DEG, 9 * DEG)), List.of());
    }

    private static RollFound roll(boolean met) {
        return new RollFound(
                CLEAN,
                Optional.of(new FoundThrow(
                        stick(),
                        60 * DEG,
                        met,
                        met ? List.of() : List.of(Limit.AILERON_TRAVEL),
                        130 * DEG,
                        5.6 * DEG,
                        -0.004,
                        Optional.empty())),
                around(60 * DEG, 12 * DEG));
    }

    private static HelpFound help() {
        List<RollHelp.Point> points = List.of(
                new RollHelp.Point(0, 0, 60 * DEG, -0.004),
                new RollHelp.Point(0, 4 * DEG, 68 * DEG, -0.005),
                new RollHelp.Point(0, 8 * DEG, 74 * DEG, -0.006));
        return new HelpFound(
                CLEAN,
                stick(),
                Optional.of(new RollHelp(12, points, points.get(2), Limit.AILERON_THROW)),
                around(60 * DEG, 12 * DEG),
                around(74 * DEG, 15 * DEG));
    }

    private static LoopFound loop() {
        List<LoopHelp.Pull> points =
                List.of(pull(0, 16, 4.0, 12.1), pull(4, 15, 4.3, 11.2), pull(8, 15, 4.6, 10.2), pull(12, 14, 4.9, 9.4));
        LoopHelp.Pull stalls = new LoopHelp.Pull(0, 14 * DEG, 2.2, 19.1, PullUp.Limit.WING, 0);
        return new LoopFound(
                CLEAN,
                Optional.of(new LoopHelp(
                        19,
                        pull(0, 12, 3.6, 14.2),
                        points.get(3),
                        points,
                        List.of(Limit.WING_MARGIN, Limit.ELEVATOR_THROW),
                        Optional.of(13.0),
                        List.of(
                                new LoopHelp.AtSpeed(15, stalls, pull(12, 14, 2.9, 12.1)),
                                new LoopHelp.AtSpeed(26, pull(0, 14, 7.6, 10.4), pull(12, 14, 9.2, 8.4))))),
                around(12.1, 2.4),
                around(9.4, 1.9),
                LoopFound.Round.FULL_THROTTLE);
    }

    private static LoopHelp.Pull pull(double flap, double elevator, double load, double radius) {
        return new LoopHelp.Pull(flap * DEG, elevator * DEG, load, radius, PullUp.Limit.ELEVATOR, 2.4 * DEG);
    }

    private static TrimFound trim(double elevator, double width, Optional<Message> shortOf) {
        List<MixCurve.Point> points = List.of(
                new MixCurve.Point(0, 0),
                new MixCurve.Point(0.25, 0.4 * elevator * DEG),
                new MixCurve.Point(0.5, 0.6 * elevator * DEG),
                new MixCurve.Point(0.75, 0.85 * elevator * DEG),
                new MixCurve.Point(1, elevator * DEG));
        MixCurve curve = new MixCurve(
                12,
                points,
                0.16 * DEG,
                List.of(
                        new MixCurve.AtSpeed(10.8, 1.1 * elevator * DEG),
                        new MixCurve.AtSpeed(13.8, 0.9 * elevator * DEG)));
        return new TrimFound(
                CLEAN, MODEL.setUps().get(3), Optional.of(curve), around(elevator * DEG, width * DEG), shortOf);
    }

    private static Headline around(double value, double half) {
        return new Headline.Known(value, value - half, value + half, Basis.ASSUMED);
    }
}
