package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import throwline.input.WrittenThrow;
import throwline.model.Elevator;
import throwline.model.Tail;
import throwline.report.Sentences;
import throwline.study.FlyQuestion;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.QuantityPrinter;

/** Options for the speeds, the loops and the moving surfaces of one set-up. */
final class FlyOptions {

    private static final double FASTEST = 150;
    private static final int MOST_SPEEDS = 8;
    private static final double LONGEST = 20;
    private static final double LARGEST_SHARE = 2;
    private static final String LOOP_AT = "--loop-at";
    private static final String ELEVATOR_MIX = "--elevator-mix";

    @Option(names = "--no-faster-than", paramLabel = "SPEED", order = 3)
    private @Nullable String limit;

    @Option(names = LOOP_AT, paramLabel = "SPEED,...", order = 4)
    private @Nullable String loopAt;

    @Option(names = "--lower-at", paramLabel = "SPEED", order = 5)
    private @Nullable String lowerAt;

    @Option(names = "--flap-time", paramLabel = "TIME", order = 6)
    private @Nullable String flapTime;

    @Option(names = ELEVATOR_MIX, paramLabel = "ELEVATOR", order = 7)
    private @Nullable String mixed;

    /**
     * The question.
     *
     * @param context of the command
     * @param tail of the model, for throws in millimetres
     * @throws WrongInput where an option cannot be read
     */
    FlyQuestion question(Context context, Tail tail) {
        Quantities quantities = new Quantities(context);
        return new FlyQuestion(
                Optional.ofNullable(limit).map(text -> speed(context, "--no-faster-than", text)),
                loopSpeeds(context),
                Optional.ofNullable(lowerAt).map(text -> speed(context, "--lower-at", text)),
                Optional.ofNullable(flapTime)
                        .map(text -> quantities.between(
                                "--flap-time",
                                text,
                                Dimension.TIME,
                                0,
                                LONGEST,
                                context.words().say("cli.fly.flap-time.allowed"))),
                Optional.ofNullable(mixed).map(text -> mixed(context, quantities, text, tail)));
    }

    private static double speed(Context context, String option, String text) {
        return new Quantities(context)
                .between(
                        option,
                        text,
                        Dimension.SPEED,
                        1,
                        FASTEST,
                        context.words().say("cli.fly.no-faster-than.allowed"));
    }

    private List<Double> loopSpeeds(Context context) {
        String text = loopAt;
        if (text == null) {
            return List.of();
        }
        List<Double> speeds = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            // A number alone is half of a decimal comma, or a speed whose unit stands behind the last.
            if (part.isBlank() || part.strip().matches("[0-9.]+")) {
                throw new WrongInput(context.words().say("cli.fly.loop-at.list", LOOP_AT, text));
            }
            double speed = speed(context, LOOP_AT, part.strip());
            if (!speeds.contains(speed)) {
                speeds.add(speed);
            }
        }
        if (speeds.size() > MOST_SPEEDS) {
            throw new WrongInput(context.words().say("cli.fly.loop-at.many", LOOP_AT, speeds.size(), MOST_SPEEDS));
        }
        return speeds;
    }

    private static FlyQuestion.Mixed mixed(Context context, Quantities quantities, String text, Tail tail) {
        if (text.contains("%")) {
            return new FlyQuestion.Share(quantities.between(
                    ELEVATOR_MIX,
                    text,
                    Dimension.FRACTION,
                    0,
                    LARGEST_SHARE,
                    context.words().say("cli.fly.elevator-mix.allowed")));
        }
        Elevator elevator = tail.elevator();
        WrittenThrow.Outcome outcome = WrittenThrow.read(text, tail.throwChord());
        if (outcome instanceof WrittenThrow.Wrong wrong) {
            boolean unclear = wrong.note().code().startsWith("input.deflection");
            String why = unclear
                    ? context.words().say("cli.fly.elevator-mix.wrong", text)
                    : new Sentences(context.words(), Display.metric()).say(wrong.note());
            throw new WrongInput(context.words().say("cli.quantity", ELEVATOR_MIX, why));
        }
        double angle = ((WrittenThrow.Angle) outcome).angle();
        if (angle < -elevator.travelUp() || angle > elevator.travelDown()) {
            throw new WrongInput(context.words()
                    .say(
                            "cli.fly.elevator-mix.travel",
                            ELEVATOR_MIX,
                            text,
                            QuantityPrinter.deflection(-elevator.travelUp()),
                            QuantityPrinter.deflection(elevator.travelDown())));
        }
        return new FlyQuestion.Throw(angle);
    }
}
