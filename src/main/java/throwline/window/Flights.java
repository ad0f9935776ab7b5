package throwline.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import throwline.input.ReadFlights;
import throwline.model.Model;
import throwline.report.chart.LearntCharts;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.LearnStudy;
import throwline.study.Learnt;
import throwline.study.Lessons;
import throwline.window.session.Disk;
import throwline.window.session.FlightNotebook;
import throwline.window.session.Session;

/**
 * Lessons of the flights noted beside the open model. They were flown with the model as its file has it, so that they
 * count for that model and for no other. Learning goes on beside the window.
 */
final class Flights {

    private static final String OFF = "off";

    private final Desk desk;
    private final Disk disk;
    private final Runnable changed;
    private final Work work = new Work();
    private Optional<Asked> asked = Optional.empty();
    private String state = "";
    private volatile Optional<Told> told = Optional.empty();

    /**
     * What flights told.
     *
     * @param learnt the numbers before and after
     * @param notes as written
     * @param shots charts
     */
    record Told(Learnt learnt, ReadFlights.Notes notes, List<HandView.Shot> shots) {}

    private record Asked(Model model, String pack, FileTime written, boolean dark) {}

    /**
     * @param changed is told, on the screen's thread, when there is something new to show
     */
    Flights(Desk desk, Disk disk, Runnable changed) {
        this.desk = desk;
        this.disk = disk;
        this.changed = changed;
    }

    /** True where flights are to be used. */
    boolean areWanted() {
        return !desk.settings().get("flights").equals(OFF);
    }

    void want(boolean wanted) {
        desk.settings().put("flights", wanted ? "" : OFF);
        asked = Optional.empty();
        changed.run();
    }

    /** A sentence behind the name of the file; empty where there are no flights. */
    String state() {
        return state;
    }

    /** What flights told of this model; from any thread. */
    Optional<Learnt> of(Model model) {
        return told.map(Told::learnt).filter(learnt -> learnt.before().model().equals(model));
    }

    /** The notes that count for this model. */
    Optional<ReadFlights.Notes> notesOf(Model model) {
        return of(model).isPresent() ? told.map(Told::notes) : Optional.empty();
    }

    /** All that flights told of the model that they were learnt for. */
    Optional<Told> told() {
        return told;
    }

    /** Learns anew where the model on the disk or its flights are other ones. */
    void follow(Session session, Ink ink) {
        Optional<Path> place = session.document().place();
        if (place.isEmpty() || session.isHeld()) {
            state = place.isEmpty() ? "" : state;
            return;
        }
        FlightNotebook book = new FlightNotebook(place.get(), disk);
        Optional<FileTime> written = written(book.place());
        if (written.isEmpty() || !areWanted()) {
            drop(written.isEmpty() ? "" : desk.say("window.state.flights.off"));
            return;
        }
        if (session.document().isUnsaved()) {
            state = desk.say("window.state.flights.changed");
            return;
        }
        Optional<Asked> now =
                Optional.of(new Asked(session.model(), session.pack().name(), written.get(), ink.dark()));
        if (now.equals(asked)) {
            state = told.isPresent() ? used() : state;
            return;
        }
        asked = now;
        state = desk.say("window.state.flights.working");
        work.begin(
                learning(session, book, ink),
                this::learnt,
                fault -> state = desk.say("window.fault", fault.getClass().getSimpleName()));
    }

    private String used() {
        return desk.say(
                "window.state.flights.used",
                told.map(each -> each.learnt().flights()).orElse(0));
    }

    private void drop(String why) {
        work.stop();
        told = Optional.empty();
        asked = Optional.empty();
        state = why;
    }

    /** What came of it: what they told, or the sentence that says why there is nothing. */
    private record Outcome(Optional<Told> told, String why) {}

    private Work.Task<Outcome> learning(Session session, FlightNotebook book, Ink ink) {
        Compared.Task task = Compared.Task.of(desk.words(), session, Optional.empty(), true);
        var airfoils = session.document().airfoils();
        Model model = session.model();
        return sections -> {
            if (!(book.read(model) instanceof ReadFlights.Notes notes)) {
                ReadFlights.Faulty faulty = (ReadFlights.Faulty) book.read(model);
                return new Outcome(Optional.empty(), faulty.problems().get(0).say(desk.words()));
            }
            Comparison plain = task.compared(sections);
            Optional<Learnt> learnt = new LearnStudy(sections, Bands.load())
                    .learn(plain, airfoils, notes.notes(), notes.logs())
                    .map(Lessons::learnt);
            return new Outcome(
                    learnt.map(each -> new Told(
                            each,
                            notes,
                            new LearntCharts(desk.words())
                                    .onScreen(each).stream().map(ink::shot).toList())),
                    desk.say("window.state.flights.nothing"));
        };
    }

    private void learnt(Outcome outcome) {
        told = outcome.told();
        state = told.isPresent() ? used() : "; " + outcome.why();
        changed.run();
    }

    private static Optional<FileTime> written(Path file) {
        try {
            return Optional.of(Files.getLastModifiedTime(file));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
