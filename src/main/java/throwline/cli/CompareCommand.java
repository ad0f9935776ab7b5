package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import throwline.study.TriedLessons;
import throwline.units.Display;

/** Command for all set-ups of a model, side by side. */
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
        List<CompareAnswer> answers = new ArrayList<>();
        Optional<Against> against = Optional.empty();
        for (int i = 0; i < packs.size(); i++) {
            context.terminal()
                    .progress(context.words()
                            .say("cli.compare.working", projects.get(i).model().name()));
            if (tries.isAsked()) {
                against = Optional.of(tried(projects.get(i), packs.get(i)));
                answers.add(against.get().answer());
            } else {
                answers.add(answer(models.get(i), projects.get(i), packs.get(i)));
            }
        }
        Document whole = document(projects, answers);
        Document document = against.map(one -> one.before(whole)).orElse(whole);
        folder.write(context, () -> files(projects, answers, document));
        context.terminal().progress("");
        answer(projects.get(0).display(), answers, document);
        return ExitCode.of(answers.stream().allMatch(CompareCommand::complete));
    }

    private static ComparisonStudy study() {
        return new ComparisonStudy(new MeasuredSections(), Bands.load());
    }

    private CompareAnswer answer(String name, ReadModel.Project project, List<Pack> packs) {
        AirfoilLibrary library = airfoils.besides(name);
        Comparison plain = study().compare(project.model(), library, packs);
        Optional<Learnt> learnt = flights.learn(context, name, plain, library).map(Lessons::learnt);
        return new CompareAnswer(learnt.map(Learnt::after).orElse(plain), project.assumed(), project.notes(), learnt);
    }

    /** The answer with throws that are tried, and what it is held against. */
    private record Against(Comparison file, CompareAnswer answer, Set<String> names) {
        Document before(Document document) {
            return TriedDocument.of(file, answer.comparison(), names, answer.learnt(), document);
        }
    }

    private Against tried(ReadModel.Project project, List<Pack> packs) {
        String name = models.get(0);
        AirfoilLibrary library = airfoils.besides(name);
        TryOption.Tried tried = tries.of(context, project.model());
        Comparison plain = study().compare(tried.model(), library, packs);
        Optional<TriedLessons> lessons = flights.areThere(name)
                ? flights.learn(context, name, study().compare(project.model(), library, packs), plain, library)
                : Optional.empty();
        Optional<Learnt> learnt = lessons.map(TriedLessons::tried).map(Lessons::learnt);
        return new Against(
                lessons.map(both -> both.file().learnt().after())
                        .orElseGet(() -> tries.before(context, project.model(), study(), library, packs)),
                new CompareAnswer(learnt.map(Learnt::after).orElse(plain), project.assumed(), project.notes(), learnt),
                tried.names());
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
