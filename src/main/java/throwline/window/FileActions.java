package throwline.window;

import java.io.File;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;
import throwline.input.FlightInterview;
import throwline.input.Interview;
import throwline.input.NamedAirfoils;
import throwline.input.NewModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.Problem;
import throwline.window.session.FlightNotebook;
import throwline.window.session.KeptAnswers;
import throwline.window.session.SafeFile;
import throwline.window.session.Session;

/** Actions of a person on files; nothing is written over unasked. */
final class FileActions {

    private final Desk desk;
    private final Program program;
    private final JFrame frame;
    private boolean asking;

    FileActions(Desk desk, Program program, JFrame frame) {
        this.desk = desk;
        this.program = program;
        this.frame = frame;
    }

    void open() {
        if (mayLeave()) {
            JFileChooser chooser = chooser();
            if (chooser.showOpenDialog(frame) == JFileChooser.APPROVE_OPTION) {
                program.open(chooser.getSelectedFile().toPath(), true);
            }
        }
    }

    /** Opens a file that a person has pointed at. */
    void open(Path file) {
        if (mayLeave()) {
            program.open(file, true);
        }
    }

    void openExample() {
        if (mayLeave()) {
            program.openExample();
        }
    }

    /** Asks about an own model; what was answered is kept, even past a crash, until all is. */
    void newModel() {
        if (!mayLeave()) {
            return;
        }
        KeptAnswers kept = program.keptAnswers();
        Interview interview = InterviewDialog.ask(
                desk, frame, earlier(kept), answers -> program.background().execute(() -> kept.keep(answers)));
        if (interview.next().isEmpty()) {
            String text = new NewModelFile(desk.words(), new NamedAirfoils(new PackedAirfoils(), Path.of("")))
                    .from(interview);
            if (program.openNew(interview.name(), text)) {
                program.background().execute(() -> kept.keep(Map.of()));
            }
        }
    }

    /** Answers of an earlier time, where their owner wants to go on with them. */
    private Map<String, String> earlier(KeptAnswers kept) {
        Map<String, String> answers = kept.read();
        if (answers.isEmpty()) {
            return answers;
        }
        String name = Optional.ofNullable(answers.get("name")).orElse(desk.say("window.new.unnamed"));
        int way = desk.choose(
                frame,
                desk.say("window.new.resume", name, answers.size()),
                desk.say("window.new.resume.on"),
                desk.say("window.new.resume.anew"));
        return way == 1 ? Map.of() : answers;
    }

    /** Asks what was noticed in a flight, and writes it behind the others. */
    void noteFlight() {
        Optional<Session> open = program.session();
        Optional<Path> place = open.flatMap(session -> session.document().place());
        if (place.isEmpty()) {
            desk.tell(frame, desk.say("window.flights.save-first"));
            return;
        }
        Session session = open.orElseThrow();
        if (session.document().isUnsaved() && !mayNote(session)) {
            return;
        }
        FlightNotebook book = new FlightNotebook(place.get(), program.disk());
        List<Problem> problems = book.problems(session.model());
        if (!problems.isEmpty()) {
            desk.tell(frame, problems.get(0).say(desk.words()));
            return;
        }
        FlightInterview interview = InterviewDialog.note(
                desk,
                frame,
                session.model(),
                LocalDate.now(ZoneId.systemDefault()).toString());
        if (interview.next().isPresent() || interview.isEmpty()) {
            return;
        }
        if (book.isInside()) {
            inside(session, book.appended(interview, session.document().text().text()));
        } else {
            book.append(interview).ifPresent(why -> desk.tell(frame, session.say(why)));
        }
        program.ask();
        program.window().changed();
    }

    /** Flights that stand in the model file are a change of the open model, which is saved at once. */
    private void inside(Session session, Optional<String> text) {
        if (text.isEmpty()) {
            desk.tell(
                    frame, desk.say("window.flights.layout", session.document().title()));
            return;
        }
        session.replace(text.get());
        save();
    }

    /** Flights belong to the model as its file has it. */
    private boolean mayNote(Session session) {
        int way = desk.choose(
                frame,
                desk.say("window.flights.unsaved", session.model().name()),
                desk.say("window.file.save"),
                desk.say("window.cancel"));
        return way == 0 && save();
    }

    private JFileChooser chooser() {
        JFileChooser chooser = new JFileChooser();
        chooser.setName("files");
        chooser.setFileFilter(new FileNameExtensionFilter(desk.say("window.file.kind"), "yaml", "yml"));
        program.session()
                .flatMap(session -> session.document().place())
                .map(Path::getParent)
                .ifPresent(folder -> chooser.setCurrentDirectory(folder.toFile()));
        return chooser;
    }

    /**
     * Saves the model where it came from.
     *
     * @return true where all is on the disk
     */
    boolean save() {
        return program.session().map(session -> after(session, session.save())).orElse(true);
    }

    /** Saves it in another place. */
    boolean saveAs() {
        Optional<Session> session = program.session();
        JFileChooser chooser = chooser();
        session.ifPresent(open -> chooser.setSelectedFile(
                new File(chooser.getCurrentDirectory(), open.document().fileName())));
        if (session.isEmpty() || chooser.showSaveDialog(frame) != JFileChooser.APPROVE_OPTION) {
            return false;
        }
        Path chosen = chooser.getSelectedFile().toPath();
        String name = String.valueOf(chosen.getFileName());
        Path place = name.contains(".") ? chosen : chosen.resolveSibling(name + ".yaml");
        return after(session.get(), session.get().saveAs(place, false));
    }

    private boolean after(Session session, SafeFile.Outcome outcome) {
        if (outcome instanceof SafeFile.NoPlace) {
            return saveAs();
        }
        if (outcome instanceof SafeFile.Taken taken) {
            int way = desk.choose(
                    frame,
                    desk.say("window.taken", taken.place()),
                    desk.say("window.cancel"),
                    desk.say("window.taken.over"));
            return way == 1 && after(session, session.saveAs(taken.place(), true));
        }
        if (outcome instanceof SafeFile.Other other) {
            return elsewhere(session, other) && !session.document().isUnsaved();
        }
        if (outcome instanceof SafeFile.Refused refused) {
            desk.tell(
                    frame,
                    desk.say(refused.why().code(), refused.why().arguments().toArray()));
            return false;
        }
        return true;
    }

    /** Looks whether another program has changed the file. */
    void look() {
        Optional<Path> place =
                program.session().flatMap(session -> session.document().place());
        place.ifPresent(file -> program.background().execute(() -> {
            String letters = program.disk().letters(file).orElse("");
            SwingUtilities.invokeLater(() -> program.session()
                    .filter(session -> !asking)
                    .ifPresent(
                            session -> session.elsewhere(file, letters).ifPresent(other -> elsewhere(session, other))));
        }));
    }

    /** The file is not what it was: which one is to stay? True where that is settled. */
    private boolean elsewhere(Session session, SafeFile.Other other) {
        asking = true;
        try {
            if (other.letters().isEmpty()) {
                desk.tell(frame, desk.say("window.gone", other.place()));
                session.keepMine(other);
                return true;
            }
            while (true) {
                int way = desk.choose(
                        frame,
                        desk.say("window.other", other.place()),
                        desk.say("window.other.reload"),
                        desk.say("window.other.mine"),
                        desk.say("window.other.both"));
                if (way == 0) {
                    session.reload(other);
                    return true;
                }
                if (way == 1) {
                    session.keepMine(other);
                    return true;
                }
                if (way < 0) {
                    return false;
                }
                BothTexts.show(frame, desk, session.document().text().text(), other.letters());
            }
        } finally {
            asking = false;
        }
    }

    /** Asks what is to become of what is not saved; true where the model may be left. */
    boolean mayLeave() {
        Optional<Session> session = program.session();
        boolean clean = session.map(open -> !open.document().isUnsaved()
                        || (open.document().place().isEmpty()
                                && !open.document().canUndo()))
                .orElse(true);
        if (clean) {
            return true;
        }
        int way = desk.choose(
                frame,
                desk.say("window.unsaved", session.get().model().name()),
                desk.say("window.file.save"),
                desk.say("window.unsaved.drop"),
                desk.say("window.cancel"));
        return way == 0 ? save() : way == 1;
    }
}
