package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.OneSide;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.study.OneSided.Held;
import throwline.study.OneSided.Stays;
import throwline.words.Message;

/** Answer on the roll sticks against surfaces that move on one side only, between the reference set-up and another. */
final class OneSidedAnswer {

    /** Less movement than this needs no answer, rad. */
    private static final double STILL = Math.toRadians(1);

    private static final String BAND = "oneSide";

    private final Model model;
    private final SetUp setUp;
    private final Bands bands;

    OneSidedAnswer(Model model, SetUp setUp, Bands bands) {
        this.model = model;
        this.setUp = setUp;
        this.bands = bands;
    }

    /** Every surface that moves, going out first; nothing where no stick rolls. */
    List<OneSided> all(Flight flight, Attitude approach) {
        List<OneSided> all = new ArrayList<>();
        SetUp reference = model.reference();
        for (Surface surface : model.wing().surfaces()) {
            double moved = surface.reached(setUp.deflection(surface.name()))
                    - surface.reached(reference.deflection(surface.name()));
            if (Math.abs(moved) >= STILL) {
                best(flight, approach, surface, reference, setUp, Stays.BACK).ifPresent(all::add);
                best(flight, approach, surface, setUp, reference, Stays.OUT).ifPresent(all::add);
            }
        }
        return all;
    }

    /** With the stick that rolls most against it. */
    private Optional<OneSided> best(
            Flight flight, Attitude approach, Surface surface, SetUp from, SetUp to, Stays stays) {
        List<Stick.Roll> sticks = model.sticks().stream()
                .filter(stick -> stick instanceof Stick.Roll && stick.worksIn(to))
                .map(stick -> (Stick.Roll) stick)
                .toList();
        if (sticks.isEmpty()) {
            return Optional.empty();
        }
        OneSide side = flight.oneSideStays(from, to, surface, sticks, approach);
        return Optional.of(new OneSided(
                surface.name(),
                stays,
                side.stick(),
                side.share()
                        .<Headline>map(share -> bands.around(BAND, share))
                        .orElse(new Headline.Unknown("why.one-side")),
                side.slowest()));
    }

    /** What a flyer should know about it. */
    static List<Message> notes(List<OneSided> all) {
        List<Message> notes = new ArrayList<>();
        note(notes, "note.one-side.not-held", all, Held.NOT);
        note(notes, "note.one-side.may-be", all, Held.MAY_BE);
        return notes;
    }

    private static void note(List<Message> notes, String code, List<OneSided> all, Held held) {
        all.stream()
                .filter(side -> side.held() == held)
                .map(OneSided::surface)
                .distinct()
                .forEach(surface -> notes.add(Message.of(code, surface)));
    }
}
