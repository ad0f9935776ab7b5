package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.flight.Airframe;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.GroundLadder;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.study.Comparison.PackResult;
import throwline.words.Note;

/** "How does each set-up fly?": every set-up of a model with every pack. */
public final class ComparisonStudy {

    private final SectionAerodynamics sections;
    private final Bands bands;

    /**
     * @param sections makes section curves
     * @param bands the bands of headline numbers
     */
    public ComparisonStudy(SectionAerodynamics sections, Bands bands) {
        this.sections = sections;
        this.bands = bands;
    }

    /**
     * Compares all set-ups of a model.
     *
     * @param model the model
     * @param airfoils where its airfoils are found; every name of the model must be there
     * @param packs the packs to fly it with, of the model
     * @return one result a pack and set-up, in their order
     */
    public Comparison compare(Model model, AirfoilLibrary airfoils, List<Pack> packs) {
        Airframe airframe = new Airframe(model, airfoils, sections);
        List<SetUp> setUps = model.setUps();
        int reference = setUps.indexOf(model.reference());
        Flight referenceFlight = new Flight(airframe, setUps.get(reference));
        List<Optional<Stall>> referenceStalls =
                packs.stream().map(referenceFlight::stall).toList();
        GroundLadder ladder = new GroundLadder(airframe);
        List<List<SetUpResult>> bySetUp = IntStream.range(0, setUps.size())
                .parallel()
                .mapToObj(i -> new Column(airframe, airfoils, ladder, setUps.get(i), setUps.get(reference))
                        .results(packs, referenceStalls))
                .toList();
        List<PackResult> results = new ArrayList<>();
        for (int p = 0; p < packs.size(); p++) {
            List<SetUpResult> row = new ArrayList<>();
            for (List<SetUpResult> column : bySetUp) {
                row.add(column.get(p));
            }
            results.add(new PackResult(packs.get(p), row));
        }
        List<Note> warnings = List.of(Note.of("note.assumed-bands"), Note.of("note.no-flap-measured"));
        return new Comparison(model, airframe.air().density(), results, warnings);
    }

    /** One set-up with all packs. */
    private final class Column {
        private final SetUp setUp;
        private final Flight flight;
        private final Flight referenceFlight;
        private final boolean isReference;
        private final AirfoilLibrary airfoils;
        private final GroundLadder ladder;

        Column(Airframe airframe, AirfoilLibrary airfoils, GroundLadder ladder, SetUp setUp, SetUp reference) {
            this.ladder = ladder;
            this.setUp = setUp;
            this.airfoils = airfoils;
            flight = new Flight(airframe, setUp);
            isReference = setUp.equals(reference);
            referenceFlight = isReference ? flight : new Flight(airframe, reference);
        }

        List<SetUpResult> results(List<Pack> packs, List<Optional<Stall>> referenceStalls) {
            return IntStream.range(0, packs.size())
                    .mapToObj(p -> result(packs.get(p), referenceStalls.get(p)))
                    .toList();
        }

        private SetUpResult result(Pack pack, Optional<Stall> referenceStall) {
            SetUpAnswer answer = new SetUpAnswer(flight.airframe().model(), setUp, bands);
            Optional<Stall> stall = isReference ? referenceStall : flight.stall(pack);
            if (stall.isEmpty()) {
                return answer.withoutStall();
            }
            double approach = SetUpAnswer.APPROACH_OVER_STALL * stall.get().speed();
            Descent descent = flight.descent(pack, stall.get(), approach);
            Optional<Descent> elsewhere = isReference
                    ? Optional.of(descent)
                    : referenceStall.map(s -> referenceFlight.descent(pack, s, approach));
            return likely(answer.of(flight, ladder, pack, stall.get(), descent, elsewhere), pack);
        }

        /**
         * Weight, balance and throws are small against the model's own errors; an airfoil that was never measured is not.
         */
        private SetUpResult likely(SetUpResult result, Pack pack) {
            Airframe airframe = flight.airframe();
            Unknowns unknowns = new Unknowns(airframe.model(), airfoils);
            if (unknowns.standIns().isEmpty()) {
                return result;
            }
            Trial trial = new Trial(airframe, airfoils, sections, pack, setUp);
            return LikelyBands.of(trial, unknowns.in(setUp)).widened(result);
        }
    }
}
