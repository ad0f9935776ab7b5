package throwline.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.chart.WingCharts;
import throwline.report.data.WingJson;
import throwline.report.table.WingTable;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.WingQuestion;
import throwline.study.WingStudy;
import throwline.study.WingSweep;
import throwline.units.Dimension;

/** The bare wing at one set-up over incidence. */
@Command(name = "wing")
final class WingCommand implements Callable<Integer> {

    private static final int FILE_WIDTH = 100;
    private static final String USUAL_SPEED = "12 m/s";
    private static final double FASTEST = 100;
    private static final int FEWEST_STRIPS = 6;
    private static final int MOST_STRIPS = 1000;
    private static final double HIGHEST = 1000;

    private final Context context;

    @Parameters(paramLabel = "MODEL", description = "${bundle:cli.model}")
    private String model = "";

    @Option(
            names = "--setup",
            required = true,
            paramLabel = "NAME",
            order = 1,
            description = "${bundle:cli.wing.setup}")
    private String setUp = "";

    @Option(
            names = "--incidence",
            required = true,
            paramLabel = "FROM:TO:STEP",
            order = 2,
            description = "${bundle:cli.wing.incidence}")
    private String incidence = "";

    @Option(names = "--speed", paramLabel = "SPEED", order = 3, description = "${bundle:cli.wing.speed}")
    private String speed = USUAL_SPEED;

    @Option(names = "--tip-helix", paramLabel = "RAD", order = 4, description = "${bundle:cli.wing.tip-helix}")
    private @Nullable String tipHelix;

    @Option(names = "--roll-rate", paramLabel = "RATE", order = 5, description = "${bundle:cli.wing.roll-rate}")
    private @Nullable String rollRate;

    @Option(names = "--above-ground", paramLabel = "HEIGHT", order = 6, description = "${bundle:cli.wing.above-ground}")
    private @Nullable String aboveGround;

    @Option(names = "--plain", order = 7, description = "${bundle:cli.wing.plain}")
    private boolean plain;

    @Option(names = "--strips", paramLabel = "N", order = 8, description = "${bundle:cli.wing.strips}")
    private @Nullable String strips;

    @Option(names = "--out", paramLabel = "DIR", order = 9, description = "${bundle:cli.wing.out}")
    private @Nullable Path out;

    @Option(names = "--replace", order = 10, description = "${bundle:cli.replace}")
    private boolean replace;

    @Option(names = "--json", order = 11, description = "${bundle:cli.json}")
    private boolean json;

    WingCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AirfoilLibrary library = Airfoils.besides(model);
        ReadModel.Project project = new ModelReader(context, library).read(model);
        WingSweep sweep =
                new WingStudy(new MeasuredSections()).sweep(project.model(), library, question(project.model()));
        String name = project.model().name();
        Optional.ofNullable(out).ifPresent(folder -> write(folder, project, sweep));
        if (json) {
            context.terminal().data(new WingJson().write(sweep));
        } else {
            Terminal terminal = context.terminal();
            Page page = Page.of(terminal.width(), terminal.unicode(), terminal.styled(), project.display());
            terminal.answer(new WingTable(page, context.words()).write(name, sweep));
        }
        boolean all = sweep.points().stream().allMatch(WingSweep.Point::converged);
        return (all ? ExitCode.DONE : ExitCode.NOT_ALL_FOUND).number();
    }

    private void write(Path folder, ReadModel.Project project, WingSweep sweep) {
        String name = project.model().name();
        OutputFolder output = new OutputFolder(folder, replace, context.words());
        Page page = Page.of(FILE_WIDTH, true, false, project.display());
        String table = new WingTable(page, context.words()).write(name, sweep);
        output.add("", List.of(new ReportFile("wing.txt", table.getBytes(StandardCharsets.UTF_8))));
        output.add("", new WingCharts(context.words()).draw(name, sweep));
        output.write();
    }

    private WingQuestion question(Model read) {
        Quantities quantities = new Quantities(context);
        SetUp chosen = new Chosen(context).among("--setup", setUp, read.name(), read.setUps(), SetUp::name);
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
