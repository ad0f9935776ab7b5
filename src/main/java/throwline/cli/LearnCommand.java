package throwline.cli;

import java.nio.file.Files;
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
import throwline.input.FlightsFile;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.answer.LearnDocument;
import throwline.report.chart.LearntCharts;
import throwline.report.data.LearnJson;
import throwline.report.document.Block;
import throwline.report.document.Document;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;
import throwline.study.LearnStudy;
import throwline.study.Learnt;
import throwline.study.Lessons;
import throwline.units.Display;

/** Command for what flights told: asks for notes at a terminal, keeps them beside the model file, shows what they change. */
@Command(name = "learn")
final class LearnCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    private ModelArgument model = new ModelArgument();

    @Parameters(index = "1", arity = "0..1", paramLabel = "NOTES", description = "${bundle:cli.learn.notes}")
    private @Nullable Path notes;

    @Option(names = "--log", paramLabel = "FILE", order = 5)
    private @Nullable Path log;

    @Mixin
    private PackOption pack = new PackOption();

    @Mixin
    private FolderOptions folder = new FolderOptions();

    @Mixin
    private AllOption all = new AllOption();

    @Mixin
    private AnswerOptions form = new AnswerOptions();

    LearnCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (model.file().equals(ModelReader.STANDARD_INPUT)) {
            throw new WrongInput(say("cli.learn.stdin"));
        }
        AirfoilLibrary library = model.airfoils();
        ReadModel.Project project = model.read(context, library);
        Path modelFile = Path.of(model.file());
        Path file = Optional.ofNullable(notes)
                .or(() -> FlightsOption.kept(context, modelFile))
                .orElseGet(() -> FlightsFile.beside(modelFile));
        if (log != null && !new LogProposer(context, project, file).propose(log)) {
            return ExitCode.DONE.number();
        }
        boolean asks = log == null && notes == null && context.terminal().interactive();
        if (asks) {
            new FlightInterviewer(context, project, file).ask();
        } else if (!Files.exists(file)) {
            throw new WrongInput(say("cli.learn.missing", file));
        }
        ReadFlights.Notes read = FlightsOption.notes(context, file, project.model());
        context.terminal().progress(say("cli.compare.working", project.model().name()));
        Comparison plain = new ComparisonStudy(new MeasuredSections(), Bands.load())
                .compare(project.model(), library, pack.all(context, project.model()));
        Optional<Learnt> learnt = new LearnStudy(new MeasuredSections(), Bands.load())
                .learn(plain, library, read.notes(), read.logs())
                .map(Lessons::learnt);
        context.terminal().progress("");
        if (learnt.isEmpty()) {
            context.terminal().answer(say("cli.learn.nothing", file) + "\n");
            return ExitCode.NOT_ALL_FOUND.number();
        }
        answer(project, learnt.get(), file, read);
        return ExitCode.DONE.number();
    }

    private void answer(ReadModel.Project project, Learnt learnt, Path file, ReadFlights.Notes read) {
        LearntCharts charts = new LearntCharts(context.words());
        List<Block.Enclosed> files = List.of(
                new Block.Enclosed(String.valueOf(file.getFileName()), read.text()),
                new Block.Enclosed(model.fileName(project), project.text()));
        Document document = LearnDocument.of(learnt, () -> charts.onPage(learnt, "l-"), files);
        folder.write(context, () -> files(project, learnt, document, charts));
        form.answer(
                context,
                project.display(),
                () -> new LearnJson(new Sentences(context.words(), Display.metric())).write(learnt),
                document,
                all.wanted());
    }

    private List<ReportFile> files(ReadModel.Project project, Learnt learnt, Document document, LearntCharts charts) {
        String name = CompareFiles.plain(project.model().name() + " flights");
        List<ReportFile> files = new ArrayList<>(
                context.files(document, project.display(), "learn.txt", (name.isEmpty() ? "flights" : name) + ".html"));
        files.addAll(charts.draw(learnt, folder.formats()));
        return files;
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
