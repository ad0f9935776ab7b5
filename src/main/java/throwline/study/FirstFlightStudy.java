package throwline.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.PullStallSpeed;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;

/** Rules for the first flights of a model, from the same runs as the answer about one set-up in depth. */
public final class FirstFlightStudy {

    /** First tries go out with this share of a stick's flaps, as with a mix (PRACTICE, methods manual 17.2). */
    public static final double FIRST_FLAP = 0.5;

    private final SectionAerodynamics sections;

    /** @param sections where the airfoils' curves come from */
    public FirstFlightStudy(SectionAerodynamics sections) {
        this.sections = sections;
    }

    /**
     * The rules of all set-ups and pull sticks.
     *
     * @param model the model
     * @param airfoils where its airfoils are found
     * @param pack with this battery
     */
    public FirstFlights rules(Model model, AirfoilLibrary airfoils, Pack pack) {
        Airframe airframe = new Airframe(model, airfoils, sections);
        Flight flight = new Flight(airframe, model.reference());
        Optional<Stall> stall = flight.stall(pack);
        if (stall.isEmpty()) {
            return FirstFlights.none();
        }
        MoveStudy.Side reference = new MoveStudy.Side(flight, model.reference(), stall.get());
        Map<String, MoveRule> moves = model.setUps().stream()
                .filter(setUp -> !model.isReference(setUp))
                .flatMap(setUp ->
                        rule(airframe, pack, reference, setUp).map(rule -> Map.entry(setUp.name(), rule)).stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return new FirstFlights(moves, stallsBelow(model, pack, reference));
    }

    private static Optional<MoveRule> rule(Airframe airframe, Pack pack, MoveStudy.Side reference, SetUp setUp) {
        Flight flight = new Flight(airframe, setUp);
        return flight.stall(pack)
                .flatMap(stall -> new MoveStudy(airframe, pack, reference, new MoveStudy.Side(flight, setUp, stall))
                        .moves(FlyQuestion.open())
                        .moves())
                .flatMap(MoveRule::of);
    }

    private static Map<String, Optional<Double>> stallsBelow(Model model, Pack pack, MoveStudy.Side reference) {
        List<Double> entries = PullStudy.entries(reference.stall());
        PullStallSpeed search = new PullStallSpeed(reference.flight(), pack, reference.stall());
        Map<String, Optional<Double>> found = new LinkedHashMap<>();
        for (Stick stick : model.sticks()) {
            if (stick instanceof Stick.Pull pull
                    && pull.deflections().values().stream().anyMatch(d -> d != 0)) {
                Map<String, Double> half = new LinkedHashMap<>(pull.deflections());
                half.replaceAll((name, flap) -> FIRST_FLAP * flap);
                found.put(
                        pull.name(),
                        search
                                .of(
                                        new Stick.Pull(pull.name(), half, pull.elevator(), pull.in()),
                                        entries.get(entries.size() - 1))
                                .stream()
                                .boxed()
                                .findFirst());
            }
        }
        return found;
    }
}
