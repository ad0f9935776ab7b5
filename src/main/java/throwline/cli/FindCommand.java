package throwline.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.chart.FindCharts;
import throwline.report.data.FindJson;
import throwline.report.html.TextPage;
import throwline.report.table.FindTable;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.FindQuestion;
import throwline.study.FindRefusal;
import throwline.study.FindResult;
import throwline.study.FindStudy;
import throwline.units.Display;

/** From what the pilot wants to throws and mixes. */
@Command(name = "find")
final class FindCommand implements Callable<Integer> {

    private static final int FILE_WIDTH = 100;

    private final Context context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "MODEL", description = "${bundle:cli.model}")
    private String model = "";

    @Mixin
    private WantOptions wants = new WantOptions();

    @Mixin
    private ShownUnits shown = new ShownUnits();

    @Option(names = "--pack", paramLabel = "NAME", order = 20, description = "${bundle:cli.fly.pack}")
    private @Nullable String pack;

    @Option(names = "--name", paramLabel = "NAME", order = 21, description = "${bundle:cli.find.name}")
    private String name = "found";

    @Option(names = "--write", paramLabel = "FILE", order = 22, description = "${bundle:cli.find.write}")
    private @Nullable Path file;

    @Option(names = "--out", paramLabel = "DIR", order = 23, description = "${bundle:cli.find.out}")
    private @Nullable Path out;

    @Option(names = "--replace", order = 24, description = "${bundle:cli.replace}")
    private boolean replace;

    @Option(names = "--json", order = 25, description = "${bundle:cli.json}")
    private boolean json;

    FindCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        FoundFile copy = new FoundFile(context, model);
        Optional.ofNullable(file).ifPresent(copy::refuseExisting);
        AirfoilLibrary library = Airfoils.besides(model);
        ReadModel.Project project = new ModelReader(context, file -> library, shown.units(context)).read(model);
        Model read = project.model();
        List<String> arguments = spec.commandLine().getParseResult().originalArgs();
        FindQuestion question = wants.question(context, read, Optional.ofNullable(pack), name, arguments);
        Sentences sentences = new Sentences(context.words(), project.display());
        FindRefusal.of(read, question).ifPresent(note -> {
            throw new WrongInput(sentences.say(note));
        });
        context.terminal().progress(context.words().say("cli.find.working", read.name()));
        FindResult result = new FindStudy(new MeasuredSections(), Bands.load()).find(read, library, question);
        Optional.ofNullable(out).ifPresent(folder -> write(folder, project, result));
        context.terminal().progress("");
        Optional<String> written = Optional.ofNullable(file).map(place -> copy.write(place, result, library));
        answer(project, result);
        written.ifPresent(context.terminal()::message);
        return (result.isMet() ? ExitCode.DONE : ExitCode.NOT_ALL_FOUND).number();
    }

    private void answer(ReadModel.Project project, FindResult result) {
        Terminal terminal = context.terminal();
        if (json) {
            terminal.data(new FindJson(new Sentences(context.words(), Display.metric())).write(result));
        } else {
            Page page = Page.of(terminal.width(), terminal.unicode(), terminal.styled(), project.display());
            terminal.answer(new FindTable(page, context.words()).write(result));
        }
    }

    private void write(Path folder, ReadModel.Project project, FindResult result) {
        OutputFolder output = new OutputFolder(folder, replace, context.words());
        Page page = Page.of(FILE_WIDTH, true, false, project.display());
        String table = new FindTable(page, context.words()).write(result);
        List<ReportFile> files = new ArrayList<>();
        files.add(new ReportFile("find.txt", table.getBytes(StandardCharsets.UTF_8)));
        files.addAll(new FindCharts(context.words()).draw(result));
        String html =
                new TextPage(page, context.words()).find(result, CompareFiles.fileName(model, project), project.text());
        files.add(new ReportFile("find.html", html.getBytes(StandardCharsets.UTF_8)));
        output.add("", files);
        output.write();
    }
}
