package throwline.study;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import throwline.flight.Airframe;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.GroundHeights;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.study.Handling.Rank;

/** Landings of all set-ups in a row with one pack. */
final class RankingStudy {

    private final Airframe airframe;
    private final Model model;
    private final Pack pack;
    private final Bands bands;

    RankingStudy(Airframe airframe, Pack pack, Bands bands) {
        this.airframe = airframe;
        this.pack = pack;
        this.bands = bands;
        model = airframe.model();
    }

    /** Landings of all set-ups, shortest first; those without a landing are left out. */
    List<Rank> ranking(GroundHeights ladder, SetUpResult known) {
        return model.setUps().parallelStream()
                .flatMap(setUp -> setUp.equals(known.setUp())
                        ? rank(setUp, known.headlines().byQuantity())
                        : rank(setUp, numbers(ladder, setUp)))
                .sorted(Comparator.comparingDouble(rank -> rank.landing().value()))
                .toList();
    }

    private static Stream<Rank> rank(SetUp setUp, Map<FlightQuantity, Headline> numbers) {
        Headline none = new Headline.Unknown("why.not-found");
        Headline windy = numbers.getOrDefault(FlightQuantity.LANDING_DISTANCE_IN_WIND, none);
        return numbers.getOrDefault(FlightQuantity.LANDING_DISTANCE, none) instanceof Headline.Known landing
                ? Stream.of(new Rank(setUp.name(), landing, windy))
                : Stream.empty();
    }

    private Map<FlightQuantity, Headline> numbers(GroundHeights ladder, SetUp setUp) {
        Flight flight = new Flight(airframe, setUp);
        FieldAnswers answers = new FieldAnswers(ladder, model.field(), setUp, bands);
        return flight.stall(pack)
                .flatMap(stall -> {
                    Descent approach = flight.descent(pack, stall, stall.approachSpeed());
                    return approach.steady().map(a -> answers.numbers(answers.of(flight, pack, stall, approach), a));
                })
                .orElse(Map.of());
    }
}
