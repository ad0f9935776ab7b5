package throwline.study;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import throwline.flight.Airframe;
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
                .flatMap(setUp -> {
                    FieldAnswer field = setUp.equals(known.setUp()) ? known.field() : field(ladder, setUp);
                    return field.landing() instanceof Headline.Known landing
                            ? Stream.of(new Rank(setUp.name(), landing, field.landingInWind()))
                            : Stream.empty();
                })
                .sorted(Comparator.comparingDouble(rank -> rank.landing().value()))
                .toList();
    }

    private FieldAnswer field(GroundHeights ladder, SetUp setUp) {
        Flight flight = new Flight(airframe, setUp);
        FieldAnswers answers = new FieldAnswers(ladder, model.field(), setUp, bands);
        return flight.stall(pack)
                .map(stall -> answers.of(
                        flight,
                        pack,
                        stall,
                        flight.descent(pack, stall, SetUpAnswer.APPROACH_OVER_STALL * stall.speed())))
                .orElseGet(() -> FieldAnswer.none(new Headline.Unknown("why.no-stall")));
    }
}
