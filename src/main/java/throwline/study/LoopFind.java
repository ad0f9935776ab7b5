package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.PullUp;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.sizing.LoopHelp;
import throwline.sizing.LoopSearch;
import throwline.sizing.SurfaceGroups;
import throwline.study.FindResult.LoopFound;
import throwline.study.FindResult.LoopFound.Round;

/** The tightest loop that a pilot wants, found, with its band and whether it gets round. */
final class LoopFind {

    private final Airframe airframe;
    private final Bands bands;
    private final FindQuestion question;
    private final SetUp in;

    LoopFind(Airframe airframe, Bands bands, FindQuestion question, SetUp in) {
        this.airframe = airframe;
        this.bands = bands;
        this.question = question;
        this.in = in;
    }

    private LoopSearch search() {
        return new LoopSearch(airframe, question.pack(), SurfaceGroups.of(airframe.model()), in, question.lift());
    }

    /**
     * The loop.
     *
     * @param entry speed, m/s, where one is known
     * @param others speeds at which it is shown too, m/s
     */
    LoopFound at(Optional<Double> entry, List<Double> others) {
        Model model = airframe.model();
        double own = model.sticks().stream()
                .filter(Stick.Pull.class::isInstance)
                .mapToDouble(s -> -((Stick.Pull) s).elevator())
                .filter(e -> e > 0)
                .findFirst()
                .orElse(model.tail().elevator().travelUp());
        Optional<LoopHelp> help = entry.flatMap(speed -> search().at(own, speed, others));
        return new LoopFound(
                in,
                help,
                radius(help.map(h -> h.points().get(0))),
                radius(help.map(LoopHelp::best)),
                help.map(this::round).orElse(Round.NEVER));
    }

    /** The stick that was found; empty where no loop comes of it. */
    Optional<Stick> stick(LoopFound found, String name) {
        return found.help().filter(help -> found.round() != Round.NEVER).map(help -> search().stick(help.best(), name));
    }

    /** With what it gets over the top. */
    private Round round(LoopHelp help) {
        Flight flight = new Flight(airframe, in);
        Optional<Stall> stall = flight.stall(question.pack());
        Stick.Pull stick = search().stick(help.best(), "");
        Optional<PullUp> pull = stall.flatMap(s -> flight.pull(stick, question.pack(), s, help.speed()))
                .map(p -> p.withLift(question.lift()));
        if (pull.isEmpty()) {
            return Round.NEVER;
        }
        if (flight.loop(question.pack(), pull.get()).topSpeed().isPresent()) {
            return Round.THROTTLE_CLOSED;
        }
        return airframe.drive(question.pack())
                        .flatMap(drive -> new LoopAnswer(
                                        airframe, in, question.pack(), drive, stall.orElseThrow(), bands)
                                .at(stick, help.speed()))
                        .filter(loop -> loop.topSpeed() instanceof Headline.Known top && top.low() > 0)
                        .isPresent()
                ? Round.FULL_THROTTLE
                : Round.NEVER;
    }

    private Headline radius(Optional<LoopHelp.Pull> pull) {
        return pull.map(LoopHelp.Pull::radius)
                .filter(r -> !r.isInfinite())
                .<Headline>map(r -> bands.around("loopRadius", r))
                .orElse(new Headline.Unknown("why.no-loop"));
    }
}
