package throwline.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import throwline.input.FlightEntry;
import throwline.input.FlightInterview;
import throwline.input.Question;
import throwline.input.ReadModel;
import throwline.report.Sentences;
import throwline.units.Display;

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
     * @throws WrongInput where the answers end early, or the file cannot be written; then it is what it was
     */
    void ask() {
        if (Files.exists(file)) {
            FlightsOption.notes(context, file, project.model());
        }
        FlightInterview interview = new FlightInterview(
                project.model(), LocalDate.now(java.time.ZoneId.systemDefault()).toString());
        Sentences sentences = new Sentences(context.words(), Display.metric());
        context.terminal().answer(say("cli.learn.intro"));
        for (Optional<FlightInterview.Asked> asked = interview.next(); asked.isPresent(); asked = interview.next()) {
            context.terminal().answer(prompt(asked.get()));
            String line = context.terminal().line().orElseThrow(() -> new WrongInput("\n" + say("cli.learn.stopped")));
            interview.answer(line).ifPresent(note -> context.terminal().answer(sentences.say(note) + "\n"));
        }
        if (interview.isEmpty()) {
            context.terminal().answer(say("cli.learn.unchanged"));
            return;
        }
        FlightEntry entry = new FlightEntry(interview);
        new NotesFile(context, file)
                .write(
                        entry.text(),
                        before -> entry.appended(
                                before, CompareFiles.plain(project.model().name()) + ".yaml"));
        context.terminal().answer(say("cli.learn.written", file));
    }

    private String prompt(FlightInterview.Asked asked) {
        Question question = asked.question();
        StringBuilder text = new StringBuilder("\n" + say(asked.sentence(), asked.about()) + "\n");
        List<String> choices = question.choices();
        for (int i = 0; i < choices.size(); i++) {
            text.append(say("cli.new.choice", i + 1, choices.get(i)));
        }
        if (!question.fallback().isEmpty()) {
            text.append('[').append(say(question.fallback(), question.usual())).append("] ");
        }
        return text.append("> ").toString();
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
