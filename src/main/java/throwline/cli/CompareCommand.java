package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.ModelFile;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.CompareAnswer;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.answer.CompareDocument;
import throwline.report.answer.CompareDocument.Compared;
import throwline.report.answer.TriedDocument;
import throwline.report.chart.Charts;
import throwline.report.data.CompareCsv;
import throwline.report.data.CompareJson;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;
import throwline.study.Learnt;
import throwline.study.Lessons;
import throwline.units.Display;

/** How each set-up of a model flies, side by side. */
@Command(name = "compare")
final class CompareCommand implements Callable<Integer> {

    private final Context context;
    private final Airfoils airfoils = new Airfoils();

    @Parameters(arity = "1..*", paramLabel = "MODEL", description = "${bundle:cli.model}")
    private List<String> models = new ArrayList<>();

    @Mixin
    private PackOption pack = new PackOption();

    @Mixin
    private FlightsOption flights = new FlightsOption();

    @Mixin
    private FolderOptions folder = new FolderOptions();

    @Mixin
    private AnswerOptions form = new AnswerOptions();

    @Mixin
    private AllOption all = new AllOption();

    @Mixin
    private TryOption tries = new TryOption();

    @Option(names = "--csv", order = 41)
    private boolean csv;

    @Mixin
    private ShownUnits shown = new ShownUnits();

    CompareCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (form.json() && csv) {
            throw new WrongInput(context.words().say("cli.compare.json-or-csv"));
        }
        if (tries.isAsked() && models.size() > 1) {
            throw new WrongInput(context.words().say("cli.try.several"));
        }
        if (folder.isAsked()) {
            prepareDrawing();
        }
        List<ReadModel.Project> projects =
                new ModelReader(context, airfoils::besides, shown.units(context)).read(models);
        List<List<Pack>> packs = projects.stream()
                .map(project -> pack.all(context, project.model()))
                .toList();
        refuseMany(projects, packs);
        ComparisonStudy study = new ComparisonStudy(new MeasuredSections(), Bands.load());
        List<CompareAnswer> answers = new ArrayList<>();
        for (int i = 0; i < packs.size(); i++) {
            ReadModel.Project project = projects.get(i);
            Model model = tried(project.model());
            AirfoilLibrary library = airfoils.besides(models.get(i));
            context.terminal().progress(context.words().say("cli.compare.working", model.name()));
            Comparison plain = study.compare(model, library, packs.get(i));
            Optional<Learnt> learnt = learn(models.get(i), plain, library).map(Lessons::learnt);
            answers.add(new CompareAnswer(
                    learnt.map(Learnt::after).orElse(plain), project.assumed(), project.notes(), learnt));
        }
        Document document = against(projects.get(0), packs.get(0), answers.get(0), document(projects, answers), study);
        folder.write(context, () -> files(projects, answers, document));
        context.terminal().progress("");
        answer(projects.get(0).display(), answers, document);
        return ExitCode.of(answers.stream().allMatch(CompareCommand::complete));
    }

    /** What flights tell; they were flown with the throws of the file, so that nothing is learnt for others. */
    private Optional<Lessons> learn(String name, Comparison plain, AirfoilLibrary library) {
        return tries.isAsked() ? Optional.empty() : flights.learn(context, name, plain, library);
    }

    /** The model with the throws that are tried. */
    private Model tried(Model model) {
        return tries.isAsked() ? tries.of(context, model).model() : model;
    }

    /** The document behind what the throws that are tried change against the file. */
    private Document against(
            ReadModel.Project project,
            List<Pack> packs,
            CompareAnswer answer,
            Document document,
            ComparisonStudy study) {
        if (!tries.isAsked()) {
            return document;
        }
        Comparison before = tries.before(context, project.model(), study, airfoils.besides(models.get(0)), packs);
        return TriedDocument.of(
                before, answer.comparison(), tries.of(context, project.model()).names(), document);
    }

    /** The limit of one model holds for all together, so that every answer takes seconds. */
    private void refuseMany(List<ReadModel.Project> projects, List<List<Pack>> packs) {
        int flown = 0;
        int moved = 0;
        for (int i = 0; i < packs.size(); i++) {
            Model model = projects.get(i).model();
            int own = model.setUps().size() * packs.get(i).size();
            flown += own;
            moved += own * model.wing().surfaces().size();
        }
        if (flown > ModelFile.MOST_FLOWN) {
            throw new WrongInput(context.words().say("cli.compare.many", flown, ModelFile.MOST_FLOWN));
        }
        if (moved > ModelFile.MOST_MOVED) {
            throw new WrongInput(context.words().say("cli.compare.many.moved", moved, ModelFile.MOST_MOVED));
        }
    }

    /** Loads the drawing classes beside the calculation. What fails here fails again, and is told, where charts are drawn. */
    private static void prepareDrawing() {
        Thread thread = new Thread(Charts::prepare, "drawing");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((t, fault) -> {});
        thread.start();
    }

    /** One document for all models, in the units of the first. */
    private Document document(List<ReadModel.Project> projects, List<CompareAnswer> answers) {
        List<Compared> compared = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            ReadModel.Project project = projects.get(i);
            String name = models.get(i);
            String file = CompareFiles.fileName(name, project);
            compared.add(new Compared(answers.get(i), airfoils.besides(name), file, project.text()));
        }
        Page page = Context.filePage(projects.get(0).display());
        return CompareDocument.of(
                compared, () -> new Charts(context.words(), page.besideSpeed()), new Figures(page, context.words()));
    }

    /** Text and page for all models, named after them, and charts model by model. */
    private List<ReportFile> files(List<ReadModel.Project> projects, List<CompareAnswer> answers, Document document) {
        context.terminal().progress(context.words().say("cli.compare.drawing"));
        String name = CompareFiles.plain(projects.stream()
                .map(project -> project.model().name())
                .distinct()
                .collect(Collectors.joining("-")));
        List<ReportFile> all = new ArrayList<>(context.files(
                document, projects.get(0).display(), "table.txt", (name.isEmpty() ? "compare" : name) + ".html"));
        for (int i = 0; i < answers.size(); i++) {
            String own = CompareFiles.plain(projects.get(i).model().name());
            String prefix = answers.size() == 1 ? "" : (i + 1) + "-" + own + "-";
            Page page = Context.filePage(projects.get(i).display());
            CompareFiles files = new CompareFiles(context.words(), page.besideSpeed(), folder.formats());
            files.of(answers.get(i)).forEach(file -> all.add(file.named(prefix + file.name())));
        }
        return all;
    }

    private void answer(Display display, List<CompareAnswer> answers, Document document) {
        if (csv) {
            context.terminal().data(new CompareCsv(new Sentences(context.words(), Display.metric())).write(answers));
            return;
        }
        form.answer(
                context,
                display,
                () -> new CompareJson(new Sentences(context.words(), Display.metric())).write(answers),
                document,
                all.wanted());
    }

    private static boolean complete(CompareAnswer answer) {
        return answer.comparison().packs().stream()
                .flatMap(result -> result.setUps().stream())
                .allMatch(setUp -> setUp.headlines().isComplete());
    }
}
