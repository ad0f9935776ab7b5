package throwline.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.flight.Airframe;
import throwline.flight.TakeOff;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.sizing.ClimbSearch;
import throwline.sizing.FoundClimb;
import throwline.sizing.FoundTakeOff;
import throwline.sizing.PoweredWants.WantedClimb;
import throwline.sizing.SurfaceGroups;
import throwline.sizing.TakeOffSearch;
import throwline.study.FindResult.ClimbFound;
import throwline.study.FindResult.TakeOffFound;
import throwline.study.FindResult.ThrowBand;

/** Search for what a pilot wants of the motor, with its bands. */
final class PoweredFind {

    private final Airframe airframe;
    private final Bands bands;
    private final FindQuestion question;
    private final SurfaceGroups groups;

    PoweredFind(Airframe airframe, Bands bands, FindQuestion question) {
        this.airframe = airframe;
        this.bands = bands;
        this.question = question;
        groups = SurfaceGroups.of(airframe.model());
    }

    /** Flap for a take-off within a run, m. */
    TakeOffFound takeOff(double within) {
        Pack pack = question.pack();
        TakeOffSearch search = new TakeOffSearch(airframe, pack, groups, name());
        List<FoundTakeOff.Trial> line = search.line();
        Optional<FoundTakeOff> found = search.within(line, within);
        if (found.isEmpty()) {
            Headline none = new Headline.Unknown("why.no-stall");
            return new TakeOffFound(found, none, none, none, Optional.empty());
        }
        FoundTakeOff.Trial trial = found.get().found();
        return new TakeOffFound(
                found,
                ofRun(trial.takeOff(), TakeOff::run),
                ofRun(trial.takeOff(), t -> t.distance(airframe.model().field().obstacle())),
                ofRun(found.get().clean().takeOff(), TakeOff::run),
                throwBand(search, line, found.get(), within));
    }

    /** The name asked for; with a mark where a set-up for something else has it. */
    private String name() {
        return question.setUp().isEmpty() ? question.name() : question.name() + " take-off";
    }

    /** A run or distance with its band, or why there is none. */
    private Headline ofRun(TakeOff takeOff, Function<TakeOff, Double> value) {
        return PoweredAnswer.whyNot(takeOff).<Headline>map(why -> why).orElseGet(() -> {
            double length = value.apply(takeOff);
            return Double.isFinite(length)
                    ? PoweredAnswer.positive(bands.around("takeOffRun", length))
                    : new Headline.Unknown("why.not-found");
        });
    }

    /** The flaps of which the lower and of which the upper end of the band is the wanted run. */
    private Optional<ThrowBand> throwBand(
            TakeOffSearch search, List<FoundTakeOff.Trial> line, FoundTakeOff found, double within) {
        if (!found.met()) {
            return Optional.empty();
        }
        Headline.Known run = bands.around("takeOffRun", within);
        Optional<FoundTakeOff> most = search.within(line, within * within / Math.max(1e-9, run.low()));
        Optional<FoundTakeOff> least = search.within(line, within * within / run.high());
        return most.flatMap(low -> least.map(high -> new ThrowBand(
                        low.found().flap(),
                        high.met()
                                ? high.found().flap()
                                : line.get(line.size() - 1).flap(),
                        false,
                        !high.met())))
                .filter(band -> band.high() > 0 || band.highOpen());
    }

    /** Throttle and flap for a climb. */
    ClimbFound climb(WantedClimb wanted, SetUp in) {
        Pack pack = question.pack();
        ClimbBands likely = new ClimbBands(bands, airframe.drive(pack).orElseThrow(), pack);
        FoundClimb found = new ClimbSearch(airframe, pack, groups, wanted).in(in);
        return new ClimbFound(
                found,
                headline(found.full(), climb -> likely.rate(climb.speed(), climb.angle(), climb.thrust())),
                headline(found.full(), climb -> likely.angle(climb.angle(), climb.thrust())));
    }

    private static Headline headline(
            Optional<FoundClimb.Climb> climb, Function<FoundClimb.Climb, Headline.Known> number) {
        return climb.<Headline>map(number).orElse(new Headline.Unknown("why.not-found"));
    }
}
