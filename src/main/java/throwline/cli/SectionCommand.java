package throwline.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import throwline.input.NamedAirfoils;
import throwline.input.Problem;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.report.Sentences;
import throwline.report.answer.AirfoilDocument;
import throwline.report.answer.SectionDocument;
import throwline.report.chart.SectionCharts;
import throwline.report.data.SectionJson;
import throwline.section.Airfoil;
import throwline.section.MeasuredSections;
import throwline.section.SurfaceState;
import throwline.study.FlowStudy;
import throwline.study.SectionFlow;
import throwline.study.SectionStudy;
import throwline.study.SectionSweep;
import throwline.units.Dimension;
import throwline.units.Display;

/** Command for one section with its surface at one deflection over angle of attack, or the list of airfoils. */
@Command(name = "section")
final class SectionCommand implements Callable<Integer> {

    private static final String USUAL_CHORD = "25 %";
    private static final double SMALLEST_REYNOLDS = 1e3;
    private static final double LARGEST_REYNOLDS = 1e8;
    private static final double MOST_UP = Math.toRadians(-45);
    private static final double MOST_DOWN = Math.toRadians(90);
    private static final double SMALLEST_CHORD = 0.08;
    private static final double LARGEST_CHORD = 0.5;
    /** Room for an angle that is written with few digits. */
    private static final double SLACK = 1e-9;

    private final Context context;

    @Parameters(arity = "0..1", paramLabel = "AIRFOIL", description = "${bundle:cli.section.airfoil}")
    private @Nullable String airfoil;

    @Option(names = "--list", order = 1)
    private boolean list;

    @Option(names = "--re", paramLabel = "RE", order = 2)
    private @Nullable String reynolds;

    @Option(names = "--flap", paramLabel = "DEG", order = 3)
    private String flap = "0";

    @Option(names = "--flap-chord", paramLabel = "SHARE", order = 4)
    private String flapChord = USUAL_CHORD;

    @Mixin
    private FolderOptions folder = new FolderOptions();

    @Mixin
    private AnswerOptions form = new AnswerOptions();

    SectionCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        NamedAirfoils library = new Airfoils().here();
        if (list) {
            List<Airfoil> all = library.names().stream()
                    .flatMap(name -> library.find(new AirfoilName(name)).stream())
                    .toList();
            context.terminal().answer(context.shown(AirfoilDocument.of(all), context.page(Display.metric())));
            return ExitCode.DONE.number();
        }
        String name = airfoil;
        String re = reynolds;
        if (name == null || re == null) {
            throw new WrongInput(context.words().say("cli.section.missing"));
        }
        Airfoil chosen = chosen(library, new AirfoilName(name));
        Quantities quantities = new Quantities(context);
        double number = quantities.number(
                "--re", re, SMALLEST_REYNOLDS, LARGEST_REYNOLDS, context.words().say("cli.section.re.allowed"));
        SurfaceState surface = surface(quantities);
        SectionStudy study = new SectionStudy(new MeasuredSections());
        SectionSweep sweep = study.sweep(chosen, surface, number);
        List<SectionFlow> flows = new FlowStudy(new MeasuredSections()).flows(chosen, surface, number);
        folder.write(
                context,
                () -> new SectionCharts(context.words())
                        .draw(study.family(chosen, surface, number), flows, folder.formats()));
        form.answer(
                context,
                Display.metric(),
                () -> new SectionJson(new Sentences(context.words(), Display.metric())).write(sweep, flows),
                SectionDocument.of(sweep, flows));
        return ExitCode.DONE.number();
    }

    private Airfoil chosen(NamedAirfoils library, AirfoilName name) {
        List<String> wrong = library.problems(name).stream()
                .map((Problem problem) -> problem.say(context.words()))
                .toList();
        if (!wrong.isEmpty()) {
            throw new WrongInput(String.join("\n", wrong));
        }
        Airfoil found = library.find(name)
                .orElseThrow(() -> new WrongInput(context.words().say("cli.section.unknown", name.text())));
        found.likeness()
                .ifPresent(like ->
                        context.terminal().message(context.words().say(like.note(), name.text(), like.donor())));
        return found;
    }

    private SurfaceState surface(Quantities quantities) {
        double deflection = quantities.angleBetween(
                "--flap",
                flap,
                MOST_UP - SLACK,
                MOST_DOWN + SLACK,
                context.words().say("cli.section.flap.allowed"));
        double chord = quantities.between(
                "--flap-chord",
                flapChord,
                Dimension.FRACTION,
                SMALLEST_CHORD - SLACK,
                LARGEST_CHORD + SLACK,
                context.words().say("cli.section.flap-chord.allowed"));
        return new SurfaceState(deflection, chord, Hinge.TAPED);
    }
}
