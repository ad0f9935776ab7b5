package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.Danger;
import throwline.study.EdgeThrow;
import throwline.study.Headline;
import throwline.study.InShort;
import throwline.study.SetUpResult;
import throwline.units.Dimension;

/** The order in which new set-ups are tried on the first flights (PRACTICE, methods manual 17.7). */
final class FlightOrder {

    /** An airbrake is first tried from this times its stall speed (PRACTICE, methods manual 17.7). */
    private static final double FIRST_TRY = 1.4;

    /** And by habit closed at this times the clean stall speed (the same). */
    private static final double WAY_BACK = 1.5;

    /** Flaps down to here are for taking off; an aileron further up than this brakes (PRACTICE, methods manual 17.1). */
    private static final double TAKE_OFF = Math.toRadians(20);

    private static final double RAISED = Math.toRadians(-5);

    private final Model model;
    private final List<SetUpResult> setUps;
    private final SheetDangers dangers;
    private final FlightRules rules;

    FlightOrder(Model model, List<SetUpResult> setUps, SheetDangers dangers, FlightRules rules) {
        this.model = model;
        this.setUps = setUps;
        this.dangers = dangers;
        this.rules = rules;
    }

    /** What a set-up is for, by where its surfaces stand. */
    private enum Use {
        CLEAN,
        TAKE_OFF,
        FLAP,
        AIRBRAKE
    }

    private static Use use(SetUp setUp) {
        double most =
                setUp.deflections().values().stream().mapToDouble(d -> d).max().orElse(0);
        double least =
                setUp.deflections().values().stream().mapToDouble(d -> d).min().orElse(0);
        if (least < RAISED && most > TAKE_OFF) {
            return Use.AIRBRAKE;
        }
        return most > TAKE_OFF ? Use.FLAP : setUp.isClean() ? Use.CLEAN : Use.TAKE_OFF;
    }

    List<Text> steps() {
        List<Text> steps = new ArrayList<>();
        if (dangers.forbids()) {
            steps.add(Text.say("sheet.order.unstable"));
        }
        steps.add(Text.say(
                "sheet.order.ground", Value.measure(EdgeThrow.TOLERANCE, Dimension.LENGTH), rules.times(setUps)));
        SetUpResult clean = setUps.stream()
                .filter(r -> model.isReference(r.setUp()))
                .findFirst()
                .orElse(setUps.get(0));
        steps.add(Text.say("sheet.order.clean", name(clean), speed(clean.stallSpeed())));
        together(steps, "take-off", Use.TAKE_OFF, r -> named(r, speed(r.approachSpeed())));
        together(
                steps,
                "flap",
                Use.FLAP,
                r -> Text.say("sheet.order.flap.one", name(r), speed(r.approachSpeed()), speed(r.stallSpeed())));
        if (!of(Use.FLAP).isEmpty()) {
            steps.add(Text.say("sheet.order.go-round", rules.close(of(Use.FLAP))));
        }
        if (!of(Use.AIRBRAKE).isEmpty()) {
            steps.add(Text.say(
                    "sheet.order.airbrake",
                    Text.join(Join.COMMA, of(Use.AIRBRAKE), r -> named(r, speed(r.stallSpeed(), FIRST_TRY))),
                    rules.close(of(Use.AIRBRAKE)),
                    speed(clean.stallSpeed(), WAY_BACK)));
        }
        together(steps, "cloud", Use.AIRBRAKE, r -> Text.name(name(r)));
        for (Stick stick : model.sticks()) {
            if (stick instanceof Stick.Pull pull) {
                rules.loop(pull).ifPresent(steps::add);
            }
        }
        landing(clean).forEach(steps::add);
        return steps;
    }

    /** First landings: with the flap that no danger rules out for it, else clean; brakes last. */
    private List<Text> landing(SetUpResult clean) {
        List<SetUpResult> order = Stream.of(of(Use.FLAP), of(Use.TAKE_OFF), List.of(clean))
                .flatMap(List::stream)
                .toList();
        List<Text> steps = new ArrayList<>();
        steps.add(order.stream()
                .filter(r -> !dangers.rulesOut(r, Danger.Use.LANDING))
                .findFirst()
                .map(r -> Text.say(
                        use(r.setUp()) == Use.FLAP ? "sheet.order.land" : "sheet.order.land-little",
                        name(r),
                        speed(r.approachSpeed())))
                .orElseGet(() -> leastWarned(order)));
        of(Use.AIRBRAKE).stream()
                .findFirst()
                .ifPresent(r -> steps.add(Text.say(
                        dangers.rulesOut(r, Danger.Use.LANDING)
                                ? "sheet.order.land-airbrake.warned"
                                : "sheet.order.land-airbrake",
                        name(r),
                        rules.never(r))));
        return steps;
    }

    /** Where every set-up is warned of: the one that is warned of least, as on every screen. */
    private Text leastWarned(List<SetUpResult> order) {
        return InShort.leastWarned(model, order)
                .map(least -> Text.say(
                        "sheet.order.land-warned",
                        least.setUp(),
                        Value.speed(least.speed()),
                        order.stream()
                                        .filter(r -> name(r).equals(least.setUp()))
                                        .anyMatch(r -> use(r.setUp()) == Use.FLAP)
                                ? Text.say("sheet.order.land-warned.half")
                                : Text.none(),
                        Text.say("danger.brief." + least.worst().key())))
                .orElseGet(() -> Text.say("sheet.order.land-none"));
    }

    private static Text named(SetUpResult result, Text speed) {
        return Text.join(Join.BLANK, List.of(Text.name(name(result)), speed));
    }

    /** One step for all set-ups of a use. */
    private void together(List<Text> steps, String step, Use use, Function<SetUpResult, Text> said) {
        if (!of(use).isEmpty()) {
            steps.add(Text.say("sheet.order." + step, Text.join(Join.COMMA, of(use), said)));
        }
    }

    private List<SetUpResult> of(Use use) {
        return setUps.stream()
                .filter(r -> !model.isReference(r.setUp()) && use(r.setUp()) == use)
                .toList();
    }

    private static String name(SetUpResult result) {
        return result.setUp().name();
    }

    private static Text speed(Headline headline) {
        return speed(headline, 1);
    }

    private static Text speed(Headline headline, double factor) {
        return headline.known()
                .<Text>map(known -> Value.speed(factor * known.value()))
                .orElseGet(() -> Text.say("chart.none"));
    }
}
