package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.report.Headlines;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** What one set-up does with the motor running; nothing where the model file says too little of it. */
final class PowerSection {

    private static final double MINUTE = 60;

    private final SetUpResult result;
    private final double chord;
    private final List<Paragraph> said = new ArrayList<>();

    private PowerSection(SetUpResult result, double chord) {
        this.result = result;
        this.chord = chord;
    }

    /**
     * The sentences.
     *
     * @param result the set-up
     * @param chord of the elevator where its throws are measured, m
     */
    static List<Paragraph> blocks(SetUpResult result, double chord) {
        PowerSection section = new PowerSection(result, chord);
        section.trim();
        section.level();
        section.slowest();
        return section.said;
    }

    private Optional<Headline.Known> known(FlightQuantity quantity) {
        return Headlines.known(result.number(quantity));
    }

    private Text edge(double angle) {
        return new Value.Edge(angle, chord);
    }

    private void trim() {
        known(FlightQuantity.THROTTLE_TRIM).ifPresent(change -> {
            said.add(
                    change.mayGoEitherWay()
                            ? Paragraph.say("fly.power.trim.little")
                            : Paragraph.say("fly.power.trim", edge(change.value())));
            said.add(Paragraph.say("fly.power.turns"));
        });
    }

    private void level() {
        known(FlightQuantity.LEVEL_THROTTLE)
                .ifPresent(share -> said.add(Paragraph.say("fly.power.level", Value.share(share.value()))));
        Optional<Headline.Known> current = known(FlightQuantity.CRUISE_CURRENT);
        Optional<Headline.Known> time = known(FlightQuantity.CRUISE_TIME);
        Optional<Headline.Known> elevator = known(FlightQuantity.CRUISE_ELEVATOR);
        known(FlightQuantity.CRUISE_SPEED)
                .filter(speed -> current.isPresent() && time.isPresent() && elevator.isPresent())
                .ifPresent(speed -> said.add(Paragraph.say(
                        "fly.power.cruise",
                        Value.speed(speed.value()),
                        new Value.Plain(current.get().value(), 0),
                        new Value.Plain(time.get().value() / MINUTE, 0),
                        edge(elevator.get().value()))));
        known(FlightQuantity.TOP_SPEED)
                .ifPresent(speed -> said.add(Paragraph.say("fly.power.top", Value.speed(speed.value()))));
    }

    private void slowest() {
        Optional<Headline.Known> stall = Headlines.known(result.stallSpeed());
        Optional<Headline.Known> half = known(FlightQuantity.SLOWEST_HALF_THROTTLE);
        Optional<Headline.Known> full = known(FlightQuantity.SLOWEST_FULL_THROTTLE);
        if (stall.isPresent() && half.isPresent() && full.isPresent()) {
            double closed = stall.get().value();
            said.add(Paragraph.say(
                    "fly.power.slowest",
                    step(closed - half.get().high()),
                    step(closed - half.get().low()),
                    step(closed - full.get().high()),
                    step(closed - full.get().low())));
        }
    }

    private static Value step(double speed) {
        return Value.of(Math.max(0, speed), Value.Kind.SPEED_STEP);
    }
}
