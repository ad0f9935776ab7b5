package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

    private final Context context;

    @Mixin
    private ModelArgument model = new ModelArgument();

    @Mixin
    private SetUpOption setUp = new SetUpOption();

    @Mixin
    private PackOption pack = new PackOption();

    @Mixin
    private FlyOptions asked = new FlyOptions();

    @Mixin
    private FolderOptions folder = new FolderOptions();

    @Mixin
    private AnswerOptions form = new AnswerOptions();

    FlyCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AirfoilLibrary library = model.airfoils();
        ReadModel.Project project = model.read(context, library);
        Model read = project.model();
        SetUp wanted = setUp.of(context, read);
        Pack with = pack.one(context, read);
        FlyResult result = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(read, library, with, wanted, asked.question(context, read.tail()));
        folder.write(context, () -> files(project, result));
        form.answer(
                context,
                project.display(),
                () -> new FlyJson(new Sentences(context.words(), Display.metric())).write(result),
                page -> new FlyTable(page, context.words()).write(result));
        return ExitCode.of(result.glance().headlines().isComplete());
    }

    private List<ReportFile> files(ReadModel.Project project, FlyResult result) {
        Page page = Context.filePage(project.display());
        List<ReportFile> files = new ArrayList<>();
        files.add(ReportFile.of("fly.txt", new FlyTable(page, context.words()).write(result)));
        files.addAll(new FlyCharts(context.words()).draw(result, folder.formats()));
        String html = new FlyPage(context.words())
                .write(result, page, model.airfoils(), model.fileName(project), project.text());
        String name = CompareFiles.plain(
                result.model().name() + " " + result.glance().setUp().name());
        files.add(ReportFile.of((name.isEmpty() ? "fly" : name) + ".html", html));
        return files;
    }
}
