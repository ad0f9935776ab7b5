package throwline.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.Interview;
import throwline.input.ModelFile;
import throwline.input.NamedAirfoils;
import throwline.input.NewModelFile;
import throwline.input.Question;
import throwline.input.ReadModel;
import throwline.report.Sentences;
import throwline.section.AirfoilLibrary;
import throwline.study.ModelReview;
import throwline.units.Display;
import throwline.words.Message;

/** Writes a new model file: asks for it at a terminal, else gives the empty form. */
@Command(name = "new")
final class NewCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "${bundle:cli.new.file}")
    private @Nullable Path file;

    @Option(names = "--full", description = "${bundle:cli.new.full}")
    private boolean full;

    NewCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Optional<Path> wanted = Optional.ofNullable(file);
        wanted.map(this::newFile).ifPresent(NewFile::refuseExisting);
        NamedAirfoils library =
                wanted.map(place -> new Airfoils().besides(place.toString())).orElseGet(() -> new Airfoils().here());
        NewModelFile writer = new NewModelFile(context.words(), library);
        if (context.terminal().interactive()) {
            SavedAnswers saved = new SavedAnswers(wanted.orElse(Path.of("throwline-new")), SavedAnswers.Of.MODEL);
            Interview interview = interview(saved, library);
            Path place = wanted.orElseGet(() -> free(interview.name()));
            newFile(place).write(full ? writer.full(interview) : writer.from(interview));
            saved.drop();
            context.terminal().answer(say("cli.new.written", place) + secondLook(place, library));
        } else if (wanted.isPresent()) {
            newFile(wanted.get()).write(writer.empty());
            context.terminal().answer(say("cli.new.form", wanted.get()));
        } else {
            context.terminal().data(writer.empty());
        }
        return ExitCode.DONE.number();
    }

    /** What is unusual about the model, while its owner still has the ruler at hand. */
    private String secondLook(Path place, AirfoilLibrary library) {
        StringBuilder text = new StringBuilder();
        ReadModel read = ModelFile.read(place, library);
        if (read instanceof ReadModel.Project project) {
            Sentences sentences = new Sentences(context.words(), project.display());
            ModelReview.of(project.model())
                    .forEach(note ->
                            text.append("  ").append(sentences.say(note)).append('\n'));
        } else if (read instanceof ReadModel.Faulty faulty) {
            faulty.problems()
                    .forEach(p ->
                            text.append("  ").append(p.say(context.words())).append('\n'));
        }
        return (text.isEmpty() ? "" : say("cli.new.again", place) + text) + say("cli.new.next", place);
    }

    private Interview interview(SavedAnswers saved, NamedAirfoils library) {
        Terminal terminal = context.terminal();
        Sentences sentences = new Sentences(context.words(), Display.metric());
        terminal.answer(say("cli.new.intro"));
        Interview interview = new Interview(library);
        resume(interview, saved);
        boolean kept = false;
        for (Optional<Question> question = interview.next(); question.isPresent(); question = interview.next()) {
            terminal.answer(prompt(question.get()));
            Optional<String> line = terminal.line();
            if (line.isEmpty()) {
                throw new WrongInput("\n" + say(kept ? "cli.new.kept" : "cli.new.stopped"));
            }
            Optional<Message> wrong = interview.answer(line.get());
            wrong.ifPresent(note -> terminal.answer(sentences.say(note) + "\n"));
            kept = saved.keep(interview.answers());
        }
        return interview;
    }

    /** Goes on with the answers of an earlier time where their owner wants to. */
    private void resume(Interview interview, SavedAnswers saved) {
        Map<String, String> earlier = saved.read();
        if (earlier.isEmpty()) {
            return;
        }
        context.terminal().answer(say("cli.new.resume", earlier.getOrDefault("name", ""), earlier.size()));
        String said = context.terminal().line().orElseThrow(() -> new WrongInput("\n" + say("cli.new.kept")));
        if (!said.toLowerCase(Locale.ROOT).startsWith("n")) {
            interview.resume(earlier);
        }
    }

    private String prompt(Question question) {
        StringBuilder text = new StringBuilder("\n" + say(question.sentence()) + "\n");
        List<String> choices = question.choices();
        for (int i = 0; i < choices.size(); i++) {
            text.append(say("cli.new.choice", i + 1, choices.get(i)));
        }
        if (!question.fallback().isEmpty()) {
            text.append('[').append(say(question.fallback(), question.usual())).append("] ");
        }
        return text.append("> ").toString();
    }

    /** A name in this folder that no file has. */
    private static Path free(String name) {
        String plain = CompareFiles.plain(name);
        String stem = plain.isEmpty() ? "model" : plain;
        Path place = Path.of(stem + ".yaml");
        for (int i = 2; Files.exists(place, LinkOption.NOFOLLOW_LINKS); i++) {
            place = Path.of(stem + "-" + i + ".yaml");
        }
        return place;
    }

    private NewFile newFile(Path place) {
        return new NewFile(place, context.words());
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
