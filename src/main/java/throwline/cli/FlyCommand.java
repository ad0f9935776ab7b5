package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import throwline.report.answer.FlyDocument;
import throwline.report.answer.TriedDocument;
import throwline.report.chart.Charts;
import throwline.report.chart.FlyCharts;
import throwline.report.data.FlyJson;
import throwline.report.document.Block;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.ComparisonStudy;
import throwline.study.FlyQuestion;
import throwline.study.FlyResult;
import throwline.study.FlyStudy;
import throwline.study.Lessons;
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
    private FlightsOption flights = new FlightsOption();

    @Mixin
    private FlyOptions asked = new FlyOptions();

    @Mixin
    private FolderOptions folder = new FolderOptions();

    @Mixin
    private TryOption tries = new TryOption();

    @Mixin
    private AllOption all = new AllOption();

    @Mixin
    private AnswerOptions form = new AnswerOptions();

    FlyCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AirfoilLibrary library = model.airfoils();
        ReadModel.Project project = model.read(context, library);
        Model read = tries.isAsked() ? tries.of(context, project.model()).model() : project.model();
        SetUp wanted = setUp.of(context, read);
        Pack with = pack.one(context, read);
        FlyQuestion question = asked.question(context, read.tail());
        // Flights were flown with the throws of the file: nothing is learnt for others.
        Optional<Lessons> lessons = !tries.isAsked() && flights.areThere(model.file())
                ? flights.learn(
                        context,
                        model.file(),
                        new ComparisonStudy(new MeasuredSections(), Bands.load()).compare(read, library, List.of(with)),
                        library)
                : Optional.empty();
        FlyResult result = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(
                        read,
                        library,
                        with,
                        wanted,
                        question,
                        glance -> lessons.map(l -> l.correction().apply(glance, with.name()))
                                .orElse(glance));
        Page page = Context.filePage(project.display());
        Document document = FlyDocument.of(
                result,
                lessons.map(Lessons::learnt),
                () -> new Charts(context.words(), page.besideSpeed()),
                new Figures(page, context.words()),
                () -> new FlyCharts(context.words()),
                library,
                new Block.Enclosed(model.fileName(project), project.text()));
        Document shown = tries.isAsked() ? against(project.model(), read, with, wanted, document) : document;
        folder.write(context, () -> files(project, result, shown));
        form.answer(
                context,
                project.display(),
                () -> new FlyJson(new Sentences(context.words(), Display.metric()))
                        .write(result, lessons.map(Lessons::learnt)),
                shown,
                all.wanted());
        return ExitCode.of(result.glance().headlines().isComplete());
    }

    /** The document behind what the throws that are tried change against the file. */
    private Document against(Model file, Model tried, Pack with, SetUp wanted, Document document) {
        ComparisonStudy study = new ComparisonStudy(new MeasuredSections(), Bands.load());
        List<SetUp> setUps = tried.setUps().stream()
                .filter(setUp -> setUp.equals(tried.reference()) || setUp.equals(wanted))
                .toList();
        return TriedDocument.of(
                tries.before(context, file, study, model.airfoils(), List.of(with)),
                study.compare(tried.withSetUps(setUps), model.airfoils(), List.of(with)),
                Set.of(wanted.name()),
                document);
    }

    private List<ReportFile> files(ReadModel.Project project, FlyResult result, Document document) {
        String name = CompareFiles.plain(
                result.model().name() + " " + result.glance().setUp().name());
        List<ReportFile> files = new ArrayList<>(
                context.files(document, project.display(), "fly.txt", (name.isEmpty() ? "fly" : name) + ".html"));
        files.addAll(new FlyCharts(context.words()).draw(result, folder.formats()));
        return files;
    }
}
