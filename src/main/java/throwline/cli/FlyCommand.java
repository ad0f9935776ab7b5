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
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;
import throwline.study.FlyQuestion;
import throwline.study.FlyResult;
import throwline.study.FlyStudy;
import throwline.study.Learnt;
import throwline.study.Lessons;
import throwline.study.TriedLessons;
import throwline.units.Display;

/** Command for one set-up in depth. */
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
        Optional<Tried> tried =
                tries.isAsked() ? Optional.of(tried(project.model(), read, with, wanted, library)) : Optional.empty();
        Optional<Lessons> lessons = tried.isPresent()
                ? tried.get().lessons().map(TriedLessons::tried)
                : flights.areThere(model.file())
                        ? flights.learn(context, model.file(), study().compare(read, library, List.of(with)), library)
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
        Document shown = tried.map(one -> one.before(wanted, document)).orElse(document);
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

    private static ComparisonStudy study() {
        return new ComparisonStudy(new MeasuredSections(), Bands.load());
    }

    /** The set-up as its file has it and as it is tried, both before any flight, and what flights told of both. */
    private record Tried(Comparison file, Comparison tried, Optional<TriedLessons> lessons) {

        /** The document behind what the throws that are tried change against the file. */
        Document before(SetUp wanted, Document document) {
            Optional<Learnt> learnt = lessons.map(both -> both.tried().learnt());
            return TriedDocument.of(
                    lessons.map(both -> both.file().learnt().after()).orElse(file),
                    learnt.map(Learnt::after).orElse(tried),
                    Set.of(wanted.name()),
                    learnt,
                    document);
        }
    }

    private Tried tried(Model file, Model tried, Pack with, SetUp wanted, AirfoilLibrary library) {
        List<SetUp> setUps = tried.setUps().stream()
                .filter(setUp -> tried.isReference(setUp) || setUp.equals(wanted))
                .toList();
        Comparison as = study().compare(tried.withSetUps(setUps), library, List.of(with));
        if (!flights.areThere(model.file())) {
            return new Tried(tries.before(context, file, study(), library, List.of(with)), as, Optional.empty());
        }
        Comparison plain = study().compare(file, library, List.of(with));
        return new Tried(plain, as, flights.learn(context, model.file(), plain, as, library));
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
