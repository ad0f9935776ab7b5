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
        SetUp other = question.setUp().isPresent() ? like(question.name()) : model.reference();
        Optional<SetUpResult> expected =
                learn(other, question).flatMap(l -> l.after(question.pack().name(), other.name()));
        if (expected.isEmpty()) {
            return new Found(study.find(model, airfoils, question), Optional.empty());
        }
        AfterFlights first = AfterFlights.of(expected.get());
        FindQuestion asked = new FindQuestion(
                question.pack(),
                question.name(),
                question.setUp().map(first::predicted),
                question.roll().map(first::predicted),
                question.levelTrim(),
                question.rollHelp(),
                question.tightestLoop(),
                question.powered());
        FindResult predicted = study.find(model, airfoils, asked);
        SetUp found = predicted.setUp().map(s -> s.found().trial().setUp()).orElse(model.reference());
        Optional<Learnt> learnt = learn(found, question);
        AfterFlights after = learnt.flatMap(l -> l.after(question.pack().name(), found.name()))
                .map(AfterFlights::of)
                .orElse(first);
        return new Found(
                new FindResult(
                        question,
                        predicted.model(),
                        predicted.pack(),
                        predicted.setUp().map(after::after),
                        predicted.roll().map(after::after),
                        predicted.levelTrim(),
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

    private Optional<Learnt> learn(SetUp other, FindQuestion question) {
        Model with = model.setUps().contains(other)
                ? model
                : model.withSetUps(
                        Stream.concat(model.setUps().stream(), Stream.of(other)).toList());
        Comparison plain = new ComparisonStudy(sections, bands).compare(with, airfoils, List.of(question.pack()));
        return new LearnStudy(sections, bands)
                .learn(plain, airfoils, notes, logs)
                .map(Lessons::learnt);
    }
}
