package throwline.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.CompareAnswer;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.chart.Charts;
import throwline.report.data.CompareCsv;
import throwline.report.data.CompareJson;
import throwline.report.html.ComparePage;
import throwline.report.html.Compared;
import throwline.report.table.CompareTable;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.ComparisonStudy;
import throwline.units.Display;

/** How each set-up of a model flies, side by side. */
@Command(name = "compare")
final class CompareCommand implements Callable<Integer> {

    /** Columns of the table in the folder. */
    private static final int FILE_WIDTH = 100;

    private final Context context;

    @Parameters(arity = "1..*", paramLabel = "MODEL", description = "${bundle:cli.model}")
    private List<String> models = new ArrayList<>();

    @Option(names = "--pack", paramLabel = "NAME", order = 1, description = "${bundle:cli.compare.pack}")
    private @Nullable String pack;

    @Option(names = "--out", paramLabel = "DIR", order = 2, description = "${bundle:cli.compare.out}")
    private @Nullable Path out;

    @Option(names = "--replace", order = 3, description = "${bundle:cli.replace}")
    private boolean replace;

    @Option(names = "--json", order = 4, description = "${bundle:cli.json}")
    private boolean json;

    @Option(names = "--csv", order = 5, description = "${bundle:cli.compare.csv}")
    private boolean csv;

    @Mixin
    private ShownUnits shown = new ShownUnits();

    CompareCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (json && csv) {
            throw new WrongInput(context.words().say("cli.compare.json-or-csv"));
        }
        if (out != null) {
            prepareDrawing();
        }
        List<ReadModel.Project> projects =
                new ModelReader(context, Airfoils::besides, shown.units(context)).read(models);
        List<List<Pack>> packs = projects.stream().map(this::packs).toList();
        ComparisonStudy study = new ComparisonStudy(new MeasuredSections(), Bands.load());
        List<CompareAnswer> answers = new ArrayList<>();
        for (int i = 0; i < projects.size(); i++) {
            ReadModel.Project project = projects.get(i);
            Model model = project.model();
            AirfoilLibrary library = Airfoils.besides(models.get(i));
            context.terminal().progress(context.words().say("cli.compare.working", model.name()));
            answers.add(
                    new CompareAnswer(study.compare(model, library, packs.get(i)), project.assumed(), project.notes()));
        }
        Optional.ofNullable(out).ifPresent(folder -> write(folder, projects, answers));
        context.terminal().progress("");
        answer(projects, answers);
        return answers.stream().allMatch(CompareCommand::complete)
                ? ExitCode.DONE.number()
                : ExitCode.NOT_ALL_FOUND.number();
    }

    /** Loads the drawing classes beside the calculation. What fails here fails again, and is told, where charts are drawn. */
    private static void prepareDrawing() {
        Thread thread = new Thread(Charts::prepare, "drawing");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((t, fault) -> {});
        thread.start();
    }

    private List<Pack> packs(ReadModel.Project project) {
        Model model = project.model();
        String wanted = pack;
        return wanted == null
                ? model.packs()
                : List.of(new Chosen(context).among("--pack", wanted, model.name(), model.packs(), Pack::name));
    }

    private void write(Path folder, List<ReadModel.Project> projects, List<CompareAnswer> answers) {
        context.terminal().progress(context.words().say("cli.compare.drawing"));
        OutputFolder output = new OutputFolder(folder, replace, context.words());
        for (int i = 0; i < answers.size(); i++) {
            String name = CompareFiles.plain(projects.get(i).model().name());
            String prefix = answers.size() == 1 ? "" : (i + 1) + "-" + name + "-";
            Page page = page(FILE_WIDTH, true, false, projects.get(i));
            String table = new CompareTable(page, context.words()).write(answers.get(i));
            CompareFiles files = new CompareFiles(context.words(), page.besideSpeed());
            output.add(prefix, files.of(answers.get(i), table));
        }
        output.add("", List.of(webPage(projects, answers)));
        output.write();
    }

    /** One page for all models, named after them. */
    private ReportFile webPage(List<ReadModel.Project> projects, List<CompareAnswer> answers) {
        List<Compared> compared = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            ReadModel.Project project = projects.get(i);
            Page page = page(FILE_WIDTH, true, false, project);
            String name = models.get(i);
            String file = CompareFiles.fileName(name, project);
            compared.add(new Compared(answers.get(i), page, Airfoils.besides(name), file, project.text()));
        }
        String name = CompareFiles.plain(projects.stream()
                .map(project -> project.model().name())
                .distinct()
                .collect(Collectors.joining("-")));
        String html = new ComparePage(context.words()).write(compared);
        return new ReportFile((name.isEmpty() ? "compare" : name) + ".html", html.getBytes(StandardCharsets.UTF_8));
    }

    private void answer(List<ReadModel.Project> projects, List<CompareAnswer> answers) {
        Sentences plain = new Sentences(context.words(), Display.metric());
        if (json) {
            context.terminal().data(new CompareJson(plain).write(answers));
            return;
        }
        if (csv) {
            context.terminal().data(new CompareCsv(plain).write(answers));
            return;
        }
        Terminal terminal = context.terminal();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < answers.size(); i++) {
            Page page = page(terminal.width(), terminal.unicode(), terminal.styled(), projects.get(i));
            text.append(i == 0 ? "" : "\n");
            text.append(new CompareTable(page, context.words()).write(answers.get(i)));
        }
        terminal.answer(text.toString());
    }

    private Page page(int width, boolean unicode, boolean styled, ReadModel.Project project) {
        return Page.of(width, unicode, styled, project.display());
    }

    private static boolean complete(CompareAnswer answer) {
        return answer.comparison().packs().stream()
                .flatMap(result -> result.setUps().stream())
                .allMatch(setUp -> setUp.headlines().isComplete());
    }
}
