package throwline.cli;

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
import picocli.CommandLine.Spec;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.answer.FindDocument;
import throwline.report.chart.FindCharts;
import throwline.report.data.FindJson;
import throwline.report.data.SheetEntry;
import throwline.report.document.Block;
import throwline.report.document.Document;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.FindAfterFlights;
import throwline.study.FindQuestion;
import throwline.study.FindRefusal;
import throwline.study.FindResult;
import throwline.study.FindStudy;
import throwline.units.Display;

/** From what the pilot wants to throws and mixes. */
@Command(name = "find")
final class FindCommand implements Callable<Integer> {

    private final Context context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ModelArgument model = new ModelArgument();

    @Mixin
    private WantOptions wants = new WantOptions();

    @Mixin
    private FlightsOption flights = new FlightsOption();

    @Mixin
    private PackOption pack = new PackOption();

    @Option(names = "--name", paramLabel = "NAME", order = 21)
    private String name = "found";

    @Option(names = "--write", paramLabel = "FILE", order = 22)
    private @Nullable Path file;

    @Mixin
    private FolderOptions folder = new FolderOptions();

    @Option(names = "--sheet", paramLabel = "DIR", order = 31)
    private @Nullable Path sheetFolder;

    @Mixin
    private SheetOptions sheets = new SheetOptions();

    @Mixin
    private AnswerOptions form = new AnswerOptions();

    @Mixin
    private AllOption all = new AllOption();

    FindCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Optional<Path> copy = Optional.ofNullable(file);
        copy.ifPresent(place -> new NewFile(place, context.words()).refuseExisting());
        AirfoilLibrary library = model.airfoils();
        ReadModel.Project project = model.read(context, library);
        Model read = project.model();
        Optional<List<SheetEntry>> earlier = sheets.earlier(context);
        List<String> arguments = spec.commandLine().getParseResult().originalArgs();
        FindQuestion question = wants.question(context, read, pack.one(context, read), name, arguments);
        Sentences sentences = new Sentences(context.words(), project.display());
        FindRefusal.of(read, question).ifPresent(note -> {
            throw new WrongInput(sentences.say(note));
        });
        context.terminal().progress(context.words().say("cli.find.working", read.name()));
        Optional<ReadFlights.Notes> flown = flights.read(context, model.file(), read);
        FindAfterFlights.Found answered = flown.map(notes -> new FindAfterFlights(
                                new MeasuredSections(), Bands.load(), read, library, notes.notes(), notes.logs())
                        .find(question))
                .orElseGet(() -> new FindAfterFlights.Found(
                        new FindStudy(new MeasuredSections(), Bands.load()).find(read, library, question),
                        Optional.empty()));
        FindResult result = answered.result();
        FoundModel found = new FoundModel(context, model.fileName(project), project, result, library);
        List<String> written = new ArrayList<>();
        Optional.ofNullable(sheetFolder)
                .ifPresent(place -> written.add(
                        found.isEmpty()
                                ? context.words().say("cli.find.sheet.nothing")
                                : sheets(
                                        place,
                                        SheetRun.of(
                                                context,
                                                sheets,
                                                project.display(),
                                                found.model(),
                                                library,
                                                result.pack(),
                                                earlier,
                                                plain -> flights.learn(context, model.file(), plain, library)))));
        Document document = FindDocument.of(
                result,
                answered.learnt(),
                () -> new FindCharts(context.words()),
                new Block.Enclosed(model.fileName(project), project.text()));
        folder.write(context, () -> files(project, result, document));
        context.terminal().progress("");
        copy.ifPresent(place -> written.add(found.write(place)));
        form.answer(
                context,
                project.display(),
                () -> new FindJson(new Sentences(context.words(), Display.metric())).write(result, answered.learnt()),
                document,
                all.wanted());
        written.forEach(context.terminal()::message);
        return ExitCode.of(result.isMet());
    }

    private String sheets(Path place, SheetRun run) {
        folder.write(context, place, run.files());
        return run.written(context, place);
    }

    private List<ReportFile> files(ReadModel.Project project, FindResult result, Document document) {
        List<ReportFile> files = new ArrayList<>(context.files(document, project.display(), "find.txt", "find.html"));
        files.addAll(new FindCharts(context.words()).draw(result, folder.formats()));
        return files;
    }
}
