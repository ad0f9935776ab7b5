package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.sizing.CandidateFlight;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundThrow;
import throwline.sizing.RollHelp;
import throwline.sizing.SetUpWants;
import throwline.sizing.SetUpWants.WantedDescent;
import throwline.sizing.SetUpWants.WantedRoll;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.RollFound;
import throwline.study.FindResult.SetUpFound;
import throwline.study.HeadlineNumbers.RollRate;

/**
 * Change that flights made to the numbers of a set-up, as factors, and the same done to what a search found. Methods
 * manual 21.7.
 *
 * @param stall factor on the stall speed
 * @param descent factor on the descent angle
 * @param roll factor on roll rates
 * @param learnt the set-up's numbers after the flights
 * @param elevator elevator against the reference, before and after
 */
record AfterFlights(double stall, double descent, double roll, SetUpResult learnt, ElevatorAfterFlights elevator) {

    /** Nothing comes down more steeply than straight. */
    private static final double STRAIGHT_DOWN = Math.PI / 2;

    /**
     * What flights did to a set-up.
     *
     * @param told what they told of the model with that set-up
     * @param pack by its name
     * @param setUp by its name
     * @return empty where they tell nothing of it
     */
    static Optional<AfterFlights> of(Learnt told, String pack, String setUp) {
        return told.after(pack, setUp).map(learnt -> {
            Optional<Headline> roll =
                    learnt.rollRates().stream().map(RollRate::rate).findFirst();
            return new AfterFlights(
                    factor(learnt.stallSpeed()),
                    factor(learnt.descentAngle()),
                    roll.map(AfterFlights::factor).orElse(1.0),
                    learnt,
                    ElevatorAfterFlights.of(told, pack, learnt));
        });
    }

    /** Most lift over what was expected. */
    double lift() {
        return 1 / (stall * stall);
    }

    private static double factor(Headline headline) {
        return headline.known()
                .flatMap(k -> k.learnt()
                        .filter(old -> old.value() > 0 && k.value() > 0)
                        .map(old -> k.value() / old.value()))
                .orElse(1.0);
    }

    /** What must be wanted of the prediction, so that after the flights it is what was wanted. */
    SetUpWants predicted(SetUpWants wants) {
        return new SetUpWants(
                wants.stallSpeed().map(v -> v / stall),
                wants.descent().map(d -> new WantedDescent(Math.min(STRAIGHT_DOWN, d.angle() / descent), d.speed())),
                wants.roll().map(this::predicted));
    }

    WantedRoll predicted(WantedRoll wanted) {
        return new WantedRoll(wanted.rate() / roll, wanted.speed());
    }

    /**
     * What was found, put right.
     *
     * @param speed of the descent that was wanted, m/s; empty where none was
     */
    SetUpFound after(SetUpFound found, Optional<Double> speed) {
        return new SetUpFound(
                after(found.found()),
                banded(found.stallSpeed(), stall, learnt.stallSpeed()),
                found.descentAngle().map(angle -> banded(angle, descent, learnt.descentAngle())),
                found.elevatorChange()
                        .map(change ->
                                speed.map(v -> elevator.changed(change, v, 1)).orElse(change)),
                found.throwBand());
    }

    RollFound after(RollFound found) {
        return new RollFound(found.in(), found.found().map(this::after), rolling(found.rate()));
    }

    HelpFound after(HelpFound found) {
        return new HelpFound(
                found.in(),
                found.helped(),
                found.help()
                        .map(h -> new RollHelp(
                                h.speed(),
                                h.points().stream().map(this::after).toList(),
                                after(h.best()),
                                h.stoppedBy())),
                rolling(found.without()),
                rolling(found.with()));
    }

    private Headline rolling(Headline rate) {
        return banded(
                rate,
                roll,
                learnt.rollRates().stream().map(RollRate::rate).findFirst().orElse(rate));
    }

    /** The number times the factor, with the band that the same number of the set-up has after the flights. */
    private static Headline banded(Headline before, double factor, Headline like) {
        Optional<Headline.Known> number = before.known();
        Optional<Headline.Known> after = like.known().filter(k -> k.learnt().isPresent() && k.value() > 0);
        if (number.isEmpty() || after.isEmpty()) {
            return before;
        }
        double value = number.get().value() * factor;
        double low = after.get().low() / after.get().value();
        double high = after.get().high() / after.get().value();
        return new Headline.Known(
                value,
                value * low,
                value * high,
                after.get().basis(),
                number.get().shared());
    }

    private FoundSetUp after(FoundSetUp found) {
        return new FoundSetUp(
                after(found.trial()),
                found.met(),
                found.why(),
                after(found.least()),
                after(found.most()),
                found.stoppedBy(),
                found.oneDegree().stream()
                        .map(one -> new FoundSetUp.OneDegree(
                                one.surface(),
                                one.step(),
                                stall * one.stallSpeed(),
                                one.angle().map(a -> descent * a)))
                        .toList(),
                found.line().stream().map(this::after).toList(),
                found.lineOf(),
                found.rollAtStops().map(r -> roll * r),
                found.flights());
    }

    private CandidateFlight after(CandidateFlight trial) {
        return new CandidateFlight(
                trial.flap(),
                trial.aileron(),
                trial.setUp(),
                trial.stall()
                        .map(s -> new CandidateFlight.StallSpeeds(
                                stall * s.speed(), stall * s.onset(), stall * s.plateau(), s.elevatorLimited())),
                Math.min(STRAIGHT_DOWN, descent * trial.angle()),
                trial.elevator(),
                trial.fault());
    }

    private FoundThrow after(FoundThrow found) {
        return new FoundThrow(
                found.stick(),
                roll * found.rate(),
                found.met(),
                found.why(),
                roll * found.rateAtStops(),
                roll * found.perDegree(),
                found.yawing(),
                found.letsGo());
    }

    private RollHelp.Point after(RollHelp.Point point) {
        return new RollHelp.Point(point.flapUp(), point.flapDown(), roll * point.rate(), point.yawing());
    }

    /** The numbers of the reference and of the set-up that was found, after the flights. */
    static Comparison flown(Comparison before, Learnt learnt) {
        List<Comparison.PackResult> packs = before.packs().stream()
                .map(pack -> new Comparison.PackResult(
                        pack.pack(),
                        pack.setUps().stream()
                                .map(r -> learnt.after(
                                                pack.pack().name(), r.setUp().name())
                                        .orElse(r))
                                .toList()))
                .toList();
        return new Comparison(before.model(), before.density(), packs, before.warnings());
    }
}
