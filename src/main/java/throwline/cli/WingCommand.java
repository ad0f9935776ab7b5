package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.answer.WingDocument;
import throwline.report.chart.WingCharts;
import throwline.report.data.WingJson;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.WingQuestion;
import throwline.study.WingStudy;
import throwline.study.WingSweep;
import throwline.units.Dimension;
import throwline.units.Display;

/** The bare wing at one set-up over incidence. */
@Command(name = "wing")
final class WingCommand implements Callable<Integer> {

    private static final String USUAL_SPEED = "12 m/s";
    private static final double FASTEST = 100;
    private static final int FEWEST_STRIPS = 6;
    private static final int MOST_STRIPS = 1000;
    private static final double HIGHEST = 1000;

    private final Context context;

    @Mixin
    private ModelArgument model = new ModelArgument();

    @Mixin
    private SetUpOption setUp = new SetUpOption();

    @Option(names = "--incidence", required = true, paramLabel = "FROM:TO:STEP", order = 2)
    private String incidence = "";

    @Option(names = "--speed", paramLabel = "SPEED", order = 3)
    private String speed = USUAL_SPEED;

    @Option(names = "--tip-helix", paramLabel = "RAD", order = 4)
    private @Nullable String tipHelix;

    @Option(names = "--roll-rate", paramLabel = "RATE", order = 5)
    private @Nullable String rollRate;

    @Option(names = "--above-ground", paramLabel = "HEIGHT", order = 6)
    private @Nullable String aboveGround;

    @Option(names = "--plain", order = 7)
    private boolean plain;

    @Option(names = "--strips", paramLabel = "N", order = 8)
    private @Nullable String strips;

    @Mixin
    private FolderOptions folder = new FolderOptions();

    @Mixin
    private AnswerOptions form = new AnswerOptions();

    WingCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AirfoilLibrary library = model.airfoils();
        ReadModel.Project project = model.read(context, library);
        WingSweep sweep =
                new WingStudy(new MeasuredSections()).sweep(project.model(), library, question(project.model()));
        String name = project.model().name();
        folder.write(context, () -> files(project, sweep));
        form.answer(
                context,
                project.display(),
                () -> new WingJson(new Sentences(context.words(), Display.metric())).write(sweep),
                WingDocument.of(name, sweep));
        return ExitCode.of(sweep.points().stream().allMatch(WingSweep.Point::converged));
    }

    private List<ReportFile> files(ReadModel.Project project, WingSweep sweep) {
        String name = project.model().name();
        List<ReportFile> files = new ArrayList<>();
        files.add(ReportFile.of(
                "wing.txt", context.shown(WingDocument.of(name, sweep), Context.filePage(project.display()))));
        files.addAll(new WingCharts(context.words()).draw(name, sweep, folder.formats()));
        return files;
    }

    private WingQuestion question(Model read) {
        Quantities quantities = new Quantities(context);
        SetUp chosen = setUp.of(context, read);
        List<Double> incidences = quantities.angles("--incidence", incidence);
        double velocity = quantities.between(
                "--speed", speed, Dimension.SPEED, 1, FASTEST, context.words().say("cli.wing.speed.allowed"));
        WingQuestion question = WingQuestion.of(chosen, incidences, velocity);
        question = rolling(question, read, quantities);
        String height = aboveGround;
        if (height != null) {
            String allowed = context.words().say("cli.wing.above-ground.allowed");
            question = question.aboveGround(
                    quantities.between("--above-ground", height, Dimension.LENGTH, 1e-3, HIGHEST, allowed));
        }
        String count = strips;
        if (count != null) {
            String allowed = context.words().say("cli.wing.strips.allowed");
            question = question.withStrips(quantities.count("--strips", count, FEWEST_STRIPS, MOST_STRIPS, allowed));
        }
        return plain ? question.asPlainLine() : question;
    }

    private WingQuestion rolling(WingQuestion question, Model read, Quantities quantities) {
        String helix = tipHelix;
        String rate = rollRate;
        if (helix != null && rate != null) {
            throw new WrongInput(context.words().say("cli.wing.one-roll"));
        }
        if (helix != null) {
            return question.withTipHelix(quantities.radians("--tip-helix", helix));
        }
        return rate == null
                ? question
                : question.withRollRate(
                        quantities.quantity("--roll-rate", rate, Dimension.ANGULAR_RATE),
                        read.wing().semiSpan());
    }
}
