package throwline.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import throwline.input.FlightsFile;
import throwline.input.LogEntry;
import throwline.input.LogFile;
import throwline.input.LogInterview;
import throwline.input.ProposedColumns;
import throwline.input.ProposedColumns.Proposed;
import throwline.input.ReadFlights;
import throwline.input.ReadLog;
import throwline.input.ReadModel;
import throwline.logs.Channel;
import throwline.logs.Descents;
import throwline.logs.Descents.Descent;
import throwline.logs.FlightLog;
import throwline.model.Model;
import throwline.notes.LogSource;

/** Proposes how a log is read, shows it, and keeps it with the flights only where a person says yes. */
final class LogProposer {

    private final Context context;
    private final Model model;
    private final Path notes;

    LogProposer(Context context, ReadModel.Project project, Path notes) {
        this.context = context;
        model = project.model();
        this.notes = notes;
    }

    /**
     * Proposes.
     *
     * @return true where the flight was kept, so that what it tells can be shown
     * @throws WrongInput where the log cannot be read or lies elsewhere
     */
    boolean propose(Path log) {
        if (!folder(log).equals(folder(notes))) {
            throw new WrongInput(say("cli.learn.log.beside", log, notes));
        }
        if (Files.exists(notes)) {
            FlightsOption.notes(context, notes, model);
        }
        List<Proposed> columns = List.of();
        List<Double> positions = List.of();
        if (ProposedColumns.areNeeded(log)) {
            ProposedColumns.Looked looked = ProposedColumns.of(log);
            looked.problem().ifPresent(problem -> {
                throw new WrongInput(problem.say(context.words()));
            });
            ProposedColumns proposed = looked.columns().orElseThrow();
            show(log, proposed);
            columns = proposed.all();
            positions =
                    columns.stream().anyMatch(c -> c.channel() == Channel.SWITCH) ? proposed.positions() : List.of();
        } else {
            context.terminal().answer(say("cli.learn.log.no-columns", log.getFileName()));
        }
        return keep(log, columns, positions);
    }

    private static Path folder(Path file) {
        Path parent = file.toAbsolutePath().normalize().getParent();
        return parent == null ? file : parent;
    }

    private boolean keep(Path log, List<Proposed> columns, List<Double> positions) {
        boolean asks = context.terminal().interactive();
        String today = LocalDate.now(java.time.ZoneId.systemDefault()).toString();
        LogInterview interview =
                new LogInterview(model, today, positions, positions.isEmpty() ? offered(log, columns) : List.of());
        FlightQuestions questions = new FlightQuestions(context, log);
        if (asks) {
            context.terminal().answer(say("cli.learn.log.intro"));
            questions.ask(interview);
        }
        LogEntry entry = asks ? entry(log, columns, interview) : plain(log, columns, today);
        context.terminal().answer(say("cli.learn.log.entry", notes.getFileName(), entry.text(model)));
        if (!positions.isEmpty() && entry.meanings().isEmpty()) {
            String all = positions.stream().map(LogInterview::number).collect(Collectors.joining(", "));
            context.terminal()
                    .answer(say(
                            "cli.learn.log.no-meaning",
                            all,
                            model.setUps().get(0).name()));
        } else if (!entry.tellsSetUps()) {
            context.terminal().answer(say("cli.learn.log.no-setups"));
        }
        if (!asks) {
            context.terminal().answer(say("cli.learn.log.copy"));
            return false;
        }
        if (!questions.choice(say("cli.learn.log.keep"), List.of("yes", "no")).equals("yes")) {
            questions.done();
            context.terminal().answer(say("cli.learn.log.not-kept"));
            return false;
        }
        new NotesFile(context, notes)
                .write(
                        entry.text(model),
                        before -> entry.appended(model, before, CompareFiles.plain(model.name()) + ".yaml"));
        questions.done();
        context.terminal().answer(say("cli.learn.log.kept", notes));
        return true;
    }

    private static LogEntry entry(Path log, List<Proposed> columns, LogInterview told) {
        return new LogEntry(
                String.valueOf(log.getFileName()),
                told.date(),
                told.pack(),
                told.temperature(),
                columns,
                told.meanings(),
                told.spans());
    }

    /** The entry as far as it can be made without asking. */
    private LogEntry plain(Path log, List<Proposed> columns, String today) {
        String pack = model.packs().get(0).name();
        return new LogEntry(String.valueOf(log.getFileName()), today, pack, "", columns, Map.of(), List.of());
    }

    /** Stretches of the log in which a set-up may have been flown, shown with their numbers. */
    private List<Descent> offered(Path log, List<Proposed> columns) {
        LogEntry entry = plain(log, columns, "2000-01-01");
        String text = "throwline flights: 1\nflights:\n" + entry.text(model);
        if (!(FlightsFile.read(text, log.toString(), model) instanceof ReadFlights.Notes read)) {
            return List.of();
        }
        LogSource source = read.notes().days().get(0).log().orElseThrow();
        ReadLog parsed = LogFile.read(log, source);
        if (parsed instanceof ReadLog.Faulty faulty) {
            throw new WrongInput(faulty.problems().stream()
                    .map(problem -> problem.say(context.words()))
                    .collect(Collectors.joining("\n")));
        }
        FlightLog flown = ((ReadLog.Log) parsed).log();
        List<Descent> found = Descents.of(flown);
        StringBuilder table =
                new StringBuilder(say(found.isEmpty() ? "cli.learn.log.no-pieces" : "cli.learn.log.pieces"));
        for (int i = 0; i < found.size(); i++) {
            Descent one = found.get(i);
            String lost =
                    Double.isNaN(one.lost()) ? "" : say("cli.learn.log.lost", String.valueOf(Math.round(one.lost())));
            table.append(say(
                    "cli.learn.log.piece",
                    i + 1,
                    LogInterview.shown(Math.floor(one.from())),
                    LogInterview.shown(Math.ceil(one.to())),
                    lost));
        }
        context.terminal().answer(table.toString());
        return found;
    }

    private void show(Path log, ProposedColumns proposed) {
        String between =
                switch (proposed.separator()) {
                    case ';' -> "cli.learn.log.semicolon";
                    case '\t' -> "cli.learn.log.tab";
                    default -> "cli.learn.log.comma";
                };
        StringBuilder text = new StringBuilder(
                say("cli.learn.log.head", log.getFileName(), String.valueOf(proposed.rows()), say(between)));
        for (Proposed column : proposed.all()) {
            String unit = column.unit().isEmpty()
                    ? ""
                    : say(column.assumed() ? "cli.learn.log.assumed" : "cli.learn.log.unit", column.unit());
            text.append(say("cli.learn.log.line", column.channel().key(), column.name(), unit, column.first()));
        }
        if (!proposed.ignored().isEmpty()) {
            text.append(say("cli.learn.log.ignored", String.join(", ", proposed.ignored())));
        }
        context.terminal().answer(text.toString());
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
