package throwline.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import throwline.input.FlightEntry;
import throwline.input.FlightInterview;
import throwline.input.ReadModel;

/** Asks at a terminal what was noticed in a flight, and writes it behind the notes that are there. */
final class FlightInterviewer {

    private final Context context;
    private final ReadModel.Project project;
    private final Path file;

    /**
     * @param context words and terminal
     * @param project the model
     * @param file where notes are kept
     */
    FlightInterviewer(Context context, ReadModel.Project project, Path file) {
        this.context = context;
        this.project = project;
        this.file = file;
    }

    /**
     * Asks and writes.
     *
     * @throws WrongInput where the answers end early, or the file cannot be written; then it is what it was, and the answers are kept
     */
    void ask() {
        if (Files.exists(file)) {
            FlightsOption.notes(context, file, project.model());
        }
        FlightInterview interview = new FlightInterview(
                project.model(), LocalDate.now(java.time.ZoneId.systemDefault()).toString());
        context.terminal().answer(say("cli.learn.intro"));
        FlightQuestions questions = new FlightQuestions(context, file);
        questions.ask(interview);
        if (interview.isEmpty()) {
            questions.done();
            context.terminal().answer(say("cli.learn.unchanged"));
            return;
        }
        FlightEntry entry = new FlightEntry(interview);
        new NotesFile(context, file)
                .write(
                        entry.text(),
                        before -> entry.appended(
                                before, CompareFiles.plain(project.model().name()) + ".yaml"));
        questions.done();
        context.terminal().answer(say("cli.learn.written", file));
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
