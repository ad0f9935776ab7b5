package throwline.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.flight.Airframe;
import throwline.flight.LoopPath;
import throwline.flight.PathPoint;
import throwline.flight.PoweredLoop;
import throwline.flight.PoweredLoops;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.power.FittedDrive;
import throwline.study.Handling.LoopAtFull;

/** Loops of one set-up at full throttle, with their bands. */
final class LoopAnswer {

    private final PoweredLoops loops;
    private final Bands bands;

    LoopAnswer(Airframe airframe, SetUp setUp, Pack pack, FittedDrive drive, Stall stall, Bands bands) {
        this.bands = bands;
        double drag = bands.around(FlightQuantity.DESCENT_ANGLE.band(setUp.isClean()), 1)
                        .high()
                - 1;
        PoweredLoops.Unknowns unknowns =
                new PoweredLoops.Unknowns(new ClimbBands(bands, drive, pack).shareOfPull(), drag);
        loops = new PoweredLoops(airframe, setUp, pack, drive.drive(), stall, unknowns);
    }

    /** Pull sticks of a model that work in a set-up; the elevator's whole travel, without a name, where there are none. */
    static List<Stick.Pull> sticks(Model model, SetUp setUp) {
        List<Stick.Pull> sticks = model.sticks().stream()
                .filter(stick -> stick instanceof Stick.Pull && stick.worksIn(setUp))
                .map(stick -> (Stick.Pull) stick)
                .toList();
        if (!sticks.isEmpty()) {
            return sticks;
        }
        double travel =
                model.tail().elevator().travelUp() + model.tail().elevator().travelDown();
        return List.of(new Stick.Pull("", Map.of(), -travel, List.of()));
    }

    /** The loop with a stick at full, entered at a speed, m/s; empty where it was not found. */
    Optional<LoopAtFull> at(Stick.Pull stick, double speed) {
        return loops.straight(speed)
                .flatMap(straight -> loops.at(stick, straight))
                .filter(loop -> loop.pull().load() > PullStudy.LEAST)
                .map(this::answer);
    }

    private LoopAtFull answer(PoweredLoop loop) {
        LoopPath path = loop.path();
        return new LoopAtFull(
                loop.pull().load(),
                loop.pull().limit(),
                bands.around("loopRadius", loop.pull().radius()),
                path.topSpeed().<Headline>map(top -> top(loop, top)).orElse(new Headline.Unknown("why.not-over")),
                path.endSpeed(),
                path.height(),
                path.way().stream()
                        .map(spot -> new PathPoint(spot.along(), spot.height()))
                        .toList());
    }

    /** Speed at the top; from none where it may not get over. */
    private Headline.Known top(PoweredLoop loop, double top) {
        Headline.Known plain = bands.around("climb", top);
        double low = loop.least().topSpeed().orElse(0.0);
        double high = loop.most().topSpeed().orElse(top);
        return new Headline.Known(top, Math.min(top, low), Math.max(top, high), plain.basis(), plain.shared());
    }
}
