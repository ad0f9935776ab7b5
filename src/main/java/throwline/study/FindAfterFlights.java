package throwline.study;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.logs.FlightLog;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.notes.FlightNotes;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.sizing.SetUpWants;
import throwline.study.FindQuestion.LevelTrim;
import throwline.study.FindQuestion.LoopWanted;
import throwline.study.FindResult.TrimFound;

/**
 * "What must stand where?", answered with what flights told: the search asks of the prediction what will be the wanted value
 * once the error that set-ups have in common is put right. Methods manual 21.7.
 */
public final class FindAfterFlights {

    private final SectionAerodynamics sections;
    private final Bands bands;
    private final Model model;
    private final AirfoilLibrary airfoils;
    private final FlightNotes notes;
    private final Map<String, FlightLog> logs;

    /**
     * An answer.
     *
     * @param result what was found
     * @param learnt what flights told; empty where nothing counts
     */
    public record Found(FindResult result, Optional<Learnt> learnt) {}

    /**
     * @param sections makes section curves
     * @param bands the bands of headline numbers
     * @param model the model
     * @param airfoils where its airfoils are found
     * @param notes flights of the model
     * @param logs by the name of the day
     */
    public FindAfterFlights(
            SectionAerodynamics sections,
            Bands bands,
            Model model,
            AirfoilLibrary airfoils,
            FlightNotes notes,
            Map<String, FlightLog> logs) {
        this.sections = sections;
        this.bands = bands;
        this.model = model;
        this.airfoils = airfoils;
        this.notes = notes;
        this.logs = Map.copyOf(logs);
    }

    /** Finds it. */
    public Found find(FindQuestion question) {
        FindStudy study = new FindStudy(sections, bands);
        String pack = question.pack().name();
        SetUp other = question.setUp().isPresent() ? like(question.name()) : model.reference();
        Optional<AfterFlights> expected = learn(other, question).flatMap(l -> AfterFlights.of(l, pack, other.name()));
        if (expected.isEmpty()) {
            return new Found(study.find(model, airfoils, question), Optional.empty());
        }
        AfterFlights first = expected.get();
        FindResult predicted = study.find(model, airfoils, asked(question, first));
        SetUp found = predicted.setUp().map(s -> s.found().trial().setUp()).orElse(model.reference());
        Optional<Learnt> learnt = learn(found, question);
        AfterFlights after =
                learnt.flatMap(l -> AfterFlights.of(l, pack, found.name())).orElse(first);
        Optional<Double> speed = question.setUp().flatMap(SetUpWants::descent).map(SetUpWants.WantedDescent::speed);
        return new Found(
                new FindResult(
                        question,
                        predicted.model(),
                        predicted.pack(),
                        predicted.setUp().map(s -> after.after(s, speed)),
                        predicted.roll().map(after::after),
                        trim(study, question, found, learnt),
                        predicted.rollHelp().map(after::after),
                        predicted.loop(),
                        predicted.takeOff(),
                        predicted.climb(),
                        predicted.sticks(),
                        predicted
                                .flown()
                                .flatMap(f -> learnt.map(l -> AfterFlights.flown(f, l)))
                                .or(predicted::flown),
                        predicted.notes()),
                learnt);
    }

    /** What to ask of the prediction. */
    private static FindQuestion asked(FindQuestion question, AfterFlights first) {
        return new FindQuestion(
                question.pack(),
                question.name(),
                question.setUp().map(first::predicted),
                question.roll().map(first::predicted),
                Optional.empty(),
                question.rollHelp(),
                question.tightestLoop().map(loop -> new LoopWanted(loop.speed(), first.lift())),
                question.powered());
    }

    /** The mix for the speed to come in at after the flights, where none was said, put right. */
    private Optional<TrimFound> trim(FindStudy study, FindQuestion question, SetUp found, Optional<Learnt> learnt) {
        Optional<LevelTrim> wanted = question.levelTrim();
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        SetUp to = wanted.get().setUp().orElse(found);
        Optional<AfterFlights> after =
                learnt.flatMap(l -> AfterFlights.of(l, question.pack().name(), to.name()));
        Optional<Double> comingIn = after.flatMap(a ->
                a.learnt().approachSpeed() instanceof Headline.Known v ? Optional.of(v.value()) : Optional.empty());
        LevelTrim asked = new LevelTrim(
                Optional.of(to),
                wanted.get().speed().or(() -> comingIn),
                wanted.get().points());
        FindQuestion alone = new FindQuestion(
                question.pack(),
                question.name(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(asked),
                Optional.empty(),
                Optional.empty());
        return study.find(model, airfoils, alone)
                .levelTrim()
                .map(trim -> after.map(a -> a.elevator().after(trim, withSetUp(found)))
                        .orElse(trim));
    }

    /** A set-up that nobody flew, as much out of the ordinary as one that is likely to be found: it has the common error alone. */
    private SetUp like(String name) {
        SetUp most = model.setUps().stream()
                .max(Comparator.comparingDouble(s -> s.deflections().values().stream()
                        .mapToDouble(Math::abs)
                        .max()
                        .orElse(0)))
                .orElseThrow();
        return new SetUp(name, most.deflections(), most.elevator());
    }

    private Model withSetUp(SetUp other) {
        return model.setUps().contains(other)
                ? model
                : model.withSetUps(
                        Stream.concat(model.setUps().stream(), Stream.of(other)).toList());
    }

    private Optional<Learnt> learn(SetUp other, FindQuestion question) {
        Comparison plain =
                new ComparisonStudy(sections, bands).compare(withSetUp(other), airfoils, List.of(question.pack()));
        return new LearnStudy(sections, bands)
                .learn(plain, airfoils, notes, logs)
                .map(Lessons::learnt);
    }
}
