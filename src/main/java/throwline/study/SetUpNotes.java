package throwline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.sizing.CandidateFlight;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Notes beside the numbers of a set-up: on elevator, tail, servos and sticks. */
final class SetUpNotes {

    /** Less angle than this left before the tail stalls is worth a word (PRACTICE, methods manual 7.6). */
    private static final double SAFE_TAIL = CandidateFlight.SAFE_TAIL;

    /** A stick that falls short by less than this is none, rad: the elevator's own band is 2 degrees. */
    private static final double STICK_SHORT = Math.toRadians(2);

    private final Model model;
    private final SetUp setUp;
    private final Bands bands;

    SetUpNotes(Model model, SetUp setUp, Bands bands) {
        this.model = model;
        this.setUp = setUp;
        this.bands = bands;
    }

    /** Whether the pull sticks bring the elevator where the slowest flight and the landing take it. */
    List<Message> sticks(Stall stall, Descent approach, FieldAnswer field) {
        Optional<Attitude> trimmed = approach.steady();
        Optional<Stick.Pull> most = model.sticks().stream()
                .filter(s -> s.worksIn(setUp))
                .flatMap(s -> s instanceof Stick.Pull pull && pull.elevator() < 0 ? Stream.of(pull) : Stream.empty())
                .min(Comparator.comparingDouble(Stick.Pull::elevator));
        if (trimmed.isEmpty() || most.isEmpty()) {
            return List.of();
        }
        double stop = -model.tail().elevator().travelUp();
        double reach = Math.max(stop, trimmed.get().elevator() + most.get().elevator());
        double needed = field.elevator()
                .map(e -> Math.min(e.roundOut(), e.touchdown()))
                .map(e -> Math.min(e, stall.attitude().elevator()))
                .orElse(stall.attitude().elevator());
        return needed >= reach - STICK_SHORT
                ? List.of()
                : List.of(Message.of("note.stick-short", most.get().name()));
    }

    /** Where the elevator's travel ends the way to a dive: how fast and how steep it gets. */
    List<Message> elevatorEnd(Flight flight, Pack pack, Stall stall, HeadlineNumbers numbers) {
        if (numbers.number(FlightQuantity.NOSE_DOWN_SPEED) instanceof Headline.Known) {
            return List.of();
        }
        return flight.elevatorEnd(pack, stall).stream()
                .map(a -> Message.of(
                        "note.elevator-ends-dive",
                        new Quantity(a.speed(), Dimension.SPEED),
                        new Quantity(a.descentAngle(), Dimension.ANGLE)))
                .toList();
    }

    /** What steady flight in the set-up has to be said of. */
    List<Message> inFlight(Stall stall, Descent approach, ServoAnswer servos) {
        List<Message> notes = new ArrayList<>();
        if (stall.elevatorLimited()) {
            notes.add(Message.of("note.elevator-before-wing"));
        }
        approach.steady().ifPresent(a -> {
            if (a.tailMargin() < SAFE_TAIL) {
                notes.add(
                        Message.of("note.tail-near-stall", new Quantity(Math.max(0, a.tailMargin()), Dimension.ANGLE)));
            }
            if (a.tailInWake()) {
                notes.add(Message.of("note.tail-in-wake"));
            }
            if (setUp.elevator() != 0) {
                notes.add(Message.of(
                        "note.elevator-still-missing",
                        new Quantity(setUp.elevator(), Dimension.ANGLE),
                        new Quantity(a.elevator() - setUp.elevator(), Dimension.ANGLE)));
            }
        });
        notes.addAll(new Servos(model, setUp, bands).notes(servos));
        return notes;
    }
}
