package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import throwline.flight.Airframe;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.GroundHeights;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.study.Comparison.PackResult;
import throwline.study.CruiseTrimStudy.Rigged;
import throwline.words.Message;

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
     * @param given the model
     * @param airfoils where its airfoils are found; every name of the model must be there
     * @param packs the packs to fly it with, of the model
     * @return one result a pack and set-up, in their order
     */
    public Comparison compare(Model given, AirfoilLibrary airfoils, List<Pack> packs) {
        Rigged rigged = new CruiseTrimStudy(sections, bands).rigged(given, airfoils);
        Model model = rigged.model();
        Airframe airframe = new Airframe(model, airfoils, sections);
        GroundHeights ladder = new GroundHeights(airframe);
        List<List<SetUpResult>> bySetUp = bySetUp(airframe, packs, column -> column.results(airfoils, ladder));
        List<PackResult> results = new ArrayList<>();
        for (int p = 0; p < packs.size(); p++) {
            List<SetUpResult> row = new ArrayList<>();
            for (List<SetUpResult> column : bySetUp) {
                row.add(column.get(p));
            }
            results.add(new PackResult(packs.get(p), row));
        }
        List<Message> warnings = new ArrayList<>(List.of(Message.of("note.assumed-bands")));
        warnings.addAll(BeyondMeasured.notes(model.setUps()));
        warnings.addAll(rigged.notes());
        if (model.propeller().isPresent() && packs.stream().noneMatch(model::isPowered)) {
            warnings.add(Message.of("note.no-motor"));
        }
        results.stream()
                .findFirst()
                .flatMap(first -> TakeOffChoice.of(first.setUps()))
                .ifPresent(warnings::add);
        warnings.addAll(DriveReview.of(model, packs, airframe.air().density(), airframe::drive));
        return new Comparison(model, airframe.air().density(), results, warnings);
    }

    /** Numbers of all set-ups in steady flight alone, in their order, pack by pack; nothing where no stall was found. */
    List<List<Optional<HeadlineNumbers>>> inFlight(Airframe airframe, List<Pack> packs) {
        return bySetUp(airframe, packs, Column::inFlight);
    }

    /** What is wanted of every set-up; what a flight holds goes with it, so that many do not need memory for all at once. */
    private <T> List<T> bySetUp(Airframe airframe, List<Pack> packs, Function<Column, T> wanted) {
        Model model = airframe.model();
        Column reference = new Column(airframe, model.reference(), packs);
        Flight apart = new Flight(airframe, model.reference());
        return model.setUps().parallelStream()
                .map(setUp -> {
                    boolean same = model.isReference(setUp);
                    Column column = same ? reference : new Column(airframe, setUp, packs);
                    column.compareWith(reference, apart);
                    return wanted.apply(column);
                })
                .toList();
    }

    /** One set-up with these packs. */
    Column column(Airframe airframe, SetUp setUp, List<Pack> packs) {
        return new Column(airframe, setUp, packs);
    }

    /** One set-up with all packs. */
    final class Column {
        private final SetUp setUp;
        private final Flight flight;
        private final List<Approach> approaches;
        private final List<Optional<Descent>> elsewhere = new ArrayList<>();

        Column(Airframe airframe, SetUp setUp, List<Pack> packs) {
            this.setUp = setUp;
            flight = new Flight(airframe, setUp);
            approaches = packs.stream().map(this::approach).toList();
        }

        private Approach approach(Pack pack) {
            Optional<Stall> stall = flight.stall(pack);
            return new Approach(pack, stall, stall.map(s -> flight.descent(pack, s, s.approachSpeed())));
        }

        /** How the reference set-up comes down at this one's speeds. */
        void compareWith(Column reference) {
            compareWith(reference, reference.flight);
        }

        /** The same with a flight of the reference set-up that threads take by turns. */
        void compareWith(Column reference, Flight flight) {
            synchronized (flight) {
                for (int p = 0; p < approaches.size(); p++) {
                    Approach own = approaches.get(p);
                    Optional<Stall> other = reference.approaches.get(p).stall;
                    elsewhere.add(
                            reference == this
                                    ? own.descent
                                    : own.stall.flatMap(stall -> other.map(
                                            there -> flight.descent(own.pack, there, stall.approachSpeed()))));
                }
            }
        }

        List<Optional<HeadlineNumbers>> inFlight() {
            return IntStream.range(0, approaches.size())
                    .mapToObj(p -> {
                        Approach own = approaches.get(p);
                        return own.stall.flatMap(stall -> own.descent.map(
                                descent -> answer().inFlight(flight, own.pack, stall, descent, elsewhere.get(p))));
                    })
                    .toList();
        }

        /** What it does in steady flight; what takes longer stands for work that is not done. */
        List<SetUpResult> steady() {
            return IntStream.range(0, approaches.size())
                    .mapToObj(p -> {
                        Approach own = approaches.get(p);
                        return own.stall
                                .flatMap(stall -> own.descent.map(
                                        descent -> answer().steady(flight, own.pack, stall, descent, elsewhere.get(p))))
                                .orElseGet(answer()::withoutStall);
                    })
                    .toList();
        }

        List<SetUpResult> results(AirfoilLibrary airfoils, GroundHeights ladder) {
            return IntStream.range(0, approaches.size())
                    .mapToObj(p -> {
                        Approach own = approaches.get(p);
                        return own.stall
                                .flatMap(stall -> own.descent.map(descent -> likely(
                                        answer().of(flight, ladder, own.pack, stall, descent, elsewhere.get(p)),
                                        airfoils,
                                        own.pack,
                                        stall)))
                                .orElseGet(answer()::withoutStall);
                    })
                    .toList();
        }

        private SetUpAnswer answer() {
            return new SetUpAnswer(flight.airframe().model(), setUp, bands);
        }

        private SetUpResult likely(SetUpResult result, AirfoilLibrary airfoils, Pack pack, Stall stall) {
            Airframe airframe = flight.airframe();
            List<InputUncertainty> unknowns = new InputUncertainties(airframe.model(), airfoils).large(setUp);
            if (unknowns.isEmpty()) {
                return result;
            }
            PerturbedRun trial = new PerturbedRun(airframe, airfoils, sections, pack, setUp, Optional.of(stall));
            return LikelyBands.of(trial, unknowns, result).widened(result);
        }
    }

    /** One set-up with one pack: its stall, and the descent at the speed that follows from it. */
    private record Approach(Pack pack, Optional<Stall> stall, Optional<Descent> descent) {}
}
