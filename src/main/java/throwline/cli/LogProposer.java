package throwline.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.input.LogEntry;
import throwline.input.ProposedColumns;
import throwline.input.ProposedColumns.Proposed;
import throwline.input.ReadModel;
import throwline.logs.Channel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;

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
        List<String> packs = model.packs().stream().map(Pack::name).toList();
        List<String> setUps = model.setUps().stream().map(SetUp::name).toList();
        Map<Double, String> meanings = new HashMap<>();
        String date = asks ? date(today) : today;
        String pack = asks && packs.size() > 1 ? choice(say("cli.learn.log.pack"), packs) : packs.get(0);
        String temperature = asks ? free(say("cli.learn.log.temperature")) : "";
        for (double position : positions) {
            if (asks) {
                meanings.put(position, choice(say("cli.learn.log.means", shown(position)), setUps));
            }
        }
        LogEntry entry = new LogEntry(String.valueOf(log.getFileName()), date, pack, temperature, columns, meanings);
        context.terminal().answer(say("cli.learn.log.entry", notes.getFileName(), entry.text(model)));
        if (!positions.isEmpty() && meanings.isEmpty()) {
            String all = positions.stream().map(LogProposer::shown).collect(Collectors.joining(", "));
            context.terminal().answer(say("cli.learn.log.no-meaning", all, setUps.get(0)));
        } else if (!entry.tellsSetUps()) {
            context.terminal().answer(say("cli.learn.log.no-setups"));
        }
        if (!asks) {
            context.terminal().answer(say("cli.learn.log.copy"));
            return false;
        }
        if (!choice(say("cli.learn.log.keep"), List.of("yes", "no")).equals("yes")) {
            context.terminal().answer(say("cli.learn.log.not-kept"));
            return false;
        }
        new NotesFile(context, notes)
                .write(
                        entry.text(model),
                        before -> entry.appended(model, before, CompareFiles.plain(model.name()) + ".yaml"));
        context.terminal().answer(say("cli.learn.log.kept", notes));
        return true;
    }

    private static String shown(double position) {
        return position == Math.rint(position) ? String.valueOf((long) position) : String.valueOf(position);
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

    private String date(String today) {
        while (true) {
            String said = free(say("cli.learn.log.date") + " [" + today + "]");
            try {
                return said.isEmpty() ? today : LocalDate.parse(said).toString();
            } catch (DateTimeException e) {
                context.terminal().answer(say("input.flights.date", said) + "\n");
            }
        }
    }

    private String choice(String question, List<String> choices) {
        StringBuilder text = new StringBuilder(question + "\n");
        for (int i = 0; i < choices.size(); i++) {
            text.append(say("cli.new.choice", i + 1, choices.get(i)));
        }
        while (true) {
            String said = free(text.toString());
            Optional<String> known = choices.stream()
                    .filter(c -> c.equalsIgnoreCase(said) || said.equals(String.valueOf(choices.indexOf(c) + 1)))
                    .findFirst();
            if (known.isPresent()) {
                return known.get();
            }
            context.terminal().answer(say("input.choice", said, String.join("; ", choices)) + "\n");
        }
    }

    private String free(String question) {
        context.terminal().answer("\n" + question.strip() + "\n> ");
        return context.terminal()
                .line()
                .map(String::strip)
                .orElseThrow(() -> new WrongInput("\n" + say("cli.learn.stopped")));
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
