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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.chart.FlyCharts;
import throwline.report.data.FlyJson;
import throwline.report.html.FlyPage;
import throwline.report.table.FlyTable;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.FlyResult;
import throwline.study.FlyStudy;
import throwline.units.Display;

/** One set-up in depth. */
@Command(name = "fly")
final class FlyCommand implements Callable<Integer> {

    private static final int FILE_WIDTH = 100;

    private final Context context;

    @Parameters(paramLabel = "MODEL", description = "${bundle:cli.model}")
    private String model = "";

    @Option(names = "--setup", required = true, paramLabel = "NAME", order = 1, description = "${bundle:cli.fly.setup}")
    private String setUp = "";

    @Option(names = "--pack", paramLabel = "NAME", order = 2, description = "${bundle:cli.fly.pack}")
    private @Nullable String pack;

    @Mixin
    private FlyOptions asked = new FlyOptions();

    @Option(names = "--out", paramLabel = "DIR", order = 10, description = "${bundle:cli.compare.out}")
    private @Nullable Path out;

    @Option(names = "--replace", order = 11, description = "${bundle:cli.replace}")
    private boolean replace;

    @Option(names = "--json", order = 12, description = "${bundle:cli.json}")
    private boolean json;

    @Mixin
    private ShownUnits shown = new ShownUnits();

    FlyCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AirfoilLibrary library = Airfoils.besides(model);
        ReadModel.Project project = new ModelReader(context, name -> library, shown.units(context)).read(model);
        Model read = project.model();
        Chosen chosen = new Chosen(context);
        SetUp wanted = chosen.among("--setup", setUp, read.name(), read.setUps(), SetUp::name);
        String packName = pack;
        Pack with = packName == null
                ? read.packs().get(0)
                : chosen.among("--pack", packName, read.name(), read.packs(), Pack::name);
        FlyResult result = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(read, library, with, wanted, asked.question(context, read.tail()));
        Optional.ofNullable(out).ifPresent(folder -> write(folder, project, result));
        if (json) {
            context.terminal().data(new FlyJson(new Sentences(context.words(), Display.metric())).write(result));
        } else {
            Terminal terminal = context.terminal();
            Page page = Page.of(terminal.width(), terminal.unicode(), terminal.styled(), project.display());
            terminal.answer(new FlyTable(page, context.words()).write(result));
        }
        boolean all = result.glance().headlines().isComplete();
        return (all ? ExitCode.DONE : ExitCode.NOT_ALL_FOUND).number();
    }

    private void write(Path folder, ReadModel.Project project, FlyResult result) {
        OutputFolder output = new OutputFolder(folder, replace, context.words());
        String table = new FlyTable(Page.of(FILE_WIDTH, true, false, project.display()), context.words()).write(result);
        List<ReportFile> files = new ArrayList<>();
        files.add(new ReportFile("fly.txt", table.getBytes(StandardCharsets.UTF_8)));
        files.addAll(new FlyCharts(context.words()).draw(result));
        String html = new FlyPage(context.words())
                .write(
                        result,
                        Page.of(FILE_WIDTH, true, false, project.display()),
                        Airfoils.besides(model),
                        CompareFiles.fileName(model, project),
                        project.text());
        String name = CompareFiles.plain(
                result.model().name() + " " + result.glance().setUp().name());
        files.add(new ReportFile((name.isEmpty() ? "fly" : name) + ".html", html.getBytes(StandardCharsets.UTF_8)));
        output.add("", files);
        output.write();
    }
}
