package throwline.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import throwline.input.GivenName;
import throwline.model.AirfoilName;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.report.Sentences;
import throwline.sizing.MixSearch;
import throwline.sizing.PoweredWants;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;
import throwline.sizing.SetUpWants;
import throwline.sizing.SetUpWants.WantedDescent;
import throwline.sizing.SetUpWants.WantedRoll;
import throwline.study.FindQuestion;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;

/** The wants of a command line, and the question that they make together. */
final class WantOptions {

    private static final double FASTEST = 150;
    private static final double FLATTEST = Math.toRadians(0.5);
    private static final double STEEPEST = Math.toRadians(89);
    private static final double SLOWEST_ROLL = Math.toRadians(1);
    private static final double FASTEST_ROLL = Math.toRadians(2000);
    private static final String AT = "--at";
    private static final String COME_DOWN = "--come-down";
    private static final String ROLL = "--roll";
    private static final String ROLL_HELP = "--roll-help";
    private static final String NO_TRIM_CHANGE = "--no-trim-change";
    private static final String TIGHTEST_LOOP = "--tightest-loop";
    private static final String TAKE_OFF = "--take-off-within";
    private static final String CLIMB = "--climb-at";
    private static final double SHORTEST_RUN = 0.5;
    private static final double LONGEST_RUN = 1000;
    private static final double SLOWEST_CLIMB = 0.1;
    private static final double FASTEST_CLIMB = 50;
    private static final List<String> AT_A_SPEED = List.of(COME_DOWN, ROLL, ROLL_HELP, NO_TRIM_CHANGE, TIGHTEST_LOOP);

    @Option(names = "--stall-at", paramLabel = "SPEED", order = 1)
    private @Nullable String stallAt;

    @Option(names = COME_DOWN, paramLabel = "ANGLE", order = 2)
    private @Nullable String comeDown;

    @Option(names = NO_TRIM_CHANGE, paramLabel = "SETUP", order = 3)
    private @Nullable String levelTrim;

    @Option(names = "--points", paramLabel = "N", order = 4)
    private @Nullable String points;

    @Option(names = ROLL, paramLabel = "RATE", order = 5)
    private @Nullable String roll;

    @Option(names = ROLL_HELP, order = 6)
    private boolean rollHelp;

    @Option(names = TIGHTEST_LOOP, order = 7)
    private boolean tightestLoop;

    @Option(names = TAKE_OFF, paramLabel = "RUN", order = 8)
    private @Nullable String takeOffWithin;

    @Option(names = CLIMB, paramLabel = "CLIMB", order = 9)
    private @Nullable String climbAt;

    @Option(names = AT, paramLabel = "SPEED", order = 10)
    private List<String> at = new ArrayList<>();

    /**
     * The question.
     *
     * @param context of the command
     * @param model as read
     * @param pack the pack it flies with
     * @param name of what is found
     * @param arguments of the command line, in their order
     * @throws WrongInput where a want cannot be read, or nothing is wanted
     */
    FindQuestion question(Context context, Model model, Pack pack, String name, List<String> arguments) {
        Quantities quantities = new Quantities(context);
        Chosen chosen = new Chosen(context);
        Map<String, Double> speeds = speeds(context, quantities, arguments);
        Optional<Double> stallSpeed =
                Optional.ofNullable(stallAt).map(v -> speed(context, quantities, "--stall-at", v));
        Optional<WantedDescent> descent = descent(context, quantities, speeds);
        Optional<WantedRoll> rolling = rolling(context, quantities, speeds);
        Optional<SetUpWants> setUp = stallSpeed.isPresent() || descent.isPresent()
                ? Optional.of(new SetUpWants(stallSpeed, descent, rolling))
                : Optional.empty();
        refuseTakenName(context, model, name);
        FindQuestion question = new FindQuestion(
                pack,
                name,
                setUp,
                rolling,
                Optional.ofNullable(levelTrim)
                        .map(s -> new FindQuestion.LevelTrim(
                                setUp.isPresent() && same(s, name)
                                        ? Optional.empty()
                                        : Optional.of(chosen.among(
                                                NO_TRIM_CHANGE, s, model.name(), model.setUps(), SetUp::name)),
                                Optional.ofNullable(speeds.get(NO_TRIM_CHANGE)),
                                count(context, quantities))),
                rollHelp
                        ? Optional.of(new FindQuestion.RollHelpWanted(Optional.ofNullable(speeds.get(ROLL_HELP))))
                        : Optional.empty(),
                tightestLoop
                        ? Optional.of(new FindQuestion.LoopWanted(Optional.ofNullable(speeds.get(TIGHTEST_LOOP))))
                        : Optional.empty(),
                powered(context, quantities));
        if (question.isEmpty()) {
            throw new WrongInput(context.words().say("cli.find.nothing"));
        }
        return question;
    }

    private Optional<WantedDescent> descent(Context context, Quantities quantities, Map<String, Double> speeds) {
        return Optional.ofNullable(comeDown)
                .map(a -> new WantedDescent(
                        quantities.angleBetween(
                                COME_DOWN,
                                a,
                                FLATTEST,
                                STEEPEST,
                                context.words().say("cli.find.come-down.allowed")),
                        needed(context, speeds, COME_DOWN)));
    }

    private Optional<WantedRoll> rolling(Context context, Quantities quantities, Map<String, Double> speeds) {
        return Optional.ofNullable(roll)
                .map(r -> new WantedRoll(
                        quantities.between(
                                ROLL,
                                r,
                                Dimension.ANGULAR_RATE,
                                SLOWEST_ROLL,
                                FASTEST_ROLL,
                                context.words().say("cli.find.roll.allowed")),
                        needed(context, speeds, ROLL)));
    }

    private PoweredWants powered(Context context, Quantities quantities) {
        return new PoweredWants(
                Optional.ofNullable(takeOffWithin)
                        .map(run -> quantities.between(
                                TAKE_OFF,
                                run,
                                Dimension.LENGTH,
                                SHORTEST_RUN,
                                LONGEST_RUN,
                                context.words().say("cli.find.take-off-within.allowed"))),
                Optional.ofNullable(climbAt).map(climb -> climb(context, quantities, climb)));
    }

    /** An angle, where it can be read as one; else a rate. */
    private static WantedClimb climb(Context context, Quantities quantities, String text) {
        String allowed = context.words().say("cli.find.climb-at.allowed");
        return QuantityReader.readDegrees(text) instanceof ReadQuantity.Amount
                ? new WantedClimb(quantities.angleBetween(CLIMB, text, FLATTEST, STEEPEST, allowed), As.ANGLE)
                : new WantedClimb(
                        quantities.between(CLIMB, text, Dimension.SPEED, SLOWEST_CLIMB, FASTEST_CLIMB, allowed),
                        As.RATE);
    }

    private static boolean same(String a, String b) {
        return new AirfoilName(a).equals(new AirfoilName(b));
    }

    private static void refuseTakenName(Context context, Model model, String name) {
        boolean taken = model.setUps().stream().anyMatch(s -> same(s.name(), name))
                || model.sticks().stream().anyMatch(s -> same(s.name(), name));
        if (taken || name.isBlank()) {
            throw new WrongInput(context.words().say("cli.find.name.taken", name));
        }
        GivenName.wrong(name, "steep").ifPresent(wrong -> {
            throw new WrongInput("--name: " + new Sentences(context.words(), Display.metric()).say(wrong));
        });
    }

    private Optional<Integer> count(Context context, Quantities quantities) {
        return Optional.ofNullable(points)
                .map(n -> quantities.count(
                        "--points",
                        n,
                        MixSearch.FEWEST,
                        MixSearch.MOST,
                        context.words().say("cli.find.points.allowed")));
    }

    private static double speed(Context context, Quantities quantities, String option, String text) {
        return quantities.between(
                option, text, Dimension.SPEED, 1, FASTEST, context.words().say("cli.fly.no-faster-than.allowed"));
    }

    private static double needed(Context context, Map<String, Double> speeds, String want) {
        return Optional.ofNullable(speeds.get(want))
                .orElseThrow(() -> new WrongInput(context.words().say("cli.find.at.missing", want)));
    }

    /** The speed of each want: what stands behind it; a speed that stands alone holds for all. */
    private Map<String, Double> speeds(Context context, Quantities quantities, List<String> arguments) {
        List<Double> given =
                at.stream().map(v -> speed(context, quantities, AT, v)).toList();
        Map<String, Double> speeds = new HashMap<>();
        if (given.size() == 1) {
            AT_A_SPEED.forEach(want -> speeds.put(want, given.get(0)));
            return speeds;
        }
        Optional<String> last = Optional.empty();
        int next = 0;
        for (String argument : arguments) {
            String option = argument.split("=", 2)[0];
            if (AT_A_SPEED.contains(option)) {
                last = Optional.of(option);
            } else if (option.equals(AT) && next < given.size()) {
                String want =
                        last.orElseThrow(() -> new WrongInput(context.words().say("cli.find.at.whose")));
                if (speeds.putIfAbsent(want, given.get(next)) != null) {
                    throw new WrongInput(context.words().say("cli.find.at.whose"));
                }
                next++;
            }
        }
        return speeds;
    }
}
