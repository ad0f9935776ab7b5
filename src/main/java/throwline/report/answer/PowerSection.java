package throwline.report.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import throwline.flight.Flight;
import throwline.model.Model;
import throwline.model.Motor;
import throwline.model.Surface;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.EdgeThrow;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult;
import throwline.study.FlyResult.LevelPoint;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.units.Dimension;

/** Section on one set-up with the motor running; nothing where the model file says too little of it. */
final class PowerSection {

    private static final double MINUTE = 60;
    private static final double PERCENT = 100;

    private final SetUpResult result;
    private final Model model;
    private final double chord;
    private final double cruise;
    private final List<Paragraph> said = new ArrayList<>();

    private PowerSection(SetUpResult result, Model model) {
        this.result = result;
        this.model = model;
        chord = model.tail().throwChord();
        cruise = model.motor().map(Motor::cruise).orElse(Motor.USUAL_CRUISE);
    }

    /**
     * The sentences.
     *
     * @param flown the set-up
     */
    static List<Block> blocks(FlyResult flown) {
        PowerSection section = new PowerSection(flown.glance(), flown.model());
        section.trim();
        section.turns();
        section.level();
        section.loops();
        section.slowest();
        List<Block> blocks = new ArrayList<>(section.said);
        if (!flown.level().isEmpty()) {
            blocks.add(Paragraph.say("fly.power.table"));
            blocks.add(table(flown.level()));
        }
        return blocks;
    }

    /** Level flight over speed, every other of them, the fastest last. */
    private static Table table(List<LevelPoint> all) {
        List<LevelPoint> few = IntStream.range(0, all.size())
                .filter(k -> (all.size() - 1 - k) % 2 == 0)
                .mapToObj(all::get)
                .toList();
        List<Table.Row> rows = List.of(
                Tables.row(
                        Text.say("fly.power.table.throttle"),
                        few,
                        point -> new Value.Plain(PERCENT * point.throttle(), 0)),
                Tables.row(Text.say("fly.power.table.current"), few, point -> new Value.Plain(point.current(), 0)),
                Tables.row(Text.say("fly.power.table.time"), few, point -> new Value.Plain(point.time() / MINUTE, 0)));
        return Tables.labelled(few, point -> Value.speed(point.speed()), rows);
    }

    private Optional<Headline.Known> known(FlightQuantity quantity) {
        return result.number(quantity).known();
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
        });
    }

    /** What the propeller's torque and swirl do. */
    private void turns() {
        Optional<Headline.Known> rudder = known(FlightQuantity.THROTTLE_RUDDER);
        if (known(FlightQuantity.GO_AROUND).isEmpty()) {
            return;
        }
        said.add(Paragraph.say("fly.power.turns"));
        if (rudder.isEmpty()) {
            return;
        }
        Optional<Surface> aileron = aileron();
        known(FlightQuantity.THROTTLE_AILERON)
                .filter(angle -> aileron.isPresent())
                .ifPresent(angle -> said.add(Paragraph.say(
                        "fly.power.turns.aileron",
                        Value.angle(angle.value()),
                        Value.measure(
                                new EdgeThrow(model.throwChord(aileron.get().name())).distance(angle.value()),
                                Dimension.LENGTH),
                        new Value.Band(angle, Value.Kind.ANGLE))));
        said.add(Paragraph.say(
                "fly.power.turns.rudder",
                Value.angle(rudder.get().value()),
                new Value.Band(rudder.get(), Value.Kind.ANGLE)));
    }

    /** The outermost surface that a stick rolls with. */
    private Optional<Surface> aileron() {
        Set<String> rolling = Flight.ailerons(model);
        return model.wing().surfaces().stream()
                .filter(surface -> rolling.contains(surface.name()))
                .max(Comparator.comparingDouble(Surface::to));
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
                        edge(elevator.get().value()),
                        Value.share(cruise))));
        known(FlightQuantity.TOP_SPEED)
                .ifPresent(speed -> said.add(Paragraph.say("fly.power.top", Value.speed(speed.value()))));
    }

    private void loops() {
        Headline loop = result.number(FlightQuantity.LOOP_TOP_SPEED);
        if (loop instanceof Headline.Known top) {
            said.add(
                    top.low() > 0
                            ? Paragraph.say(
                                    "fly.power.loop", Value.speed(top.value()), new Value.Band(top, Value.Kind.SPEED))
                            : Paragraph.say("fly.power.loop.may"));
        } else if (loop instanceof Headline.Unknown why && why.why().equals("why.not-over")) {
            said.add(Paragraph.say("fly.power.loop.not"));
        }
    }

    private void slowest() {
        Optional<Headline.Known> stall = result.stallSpeed().known();
        Optional<Headline.Known> half = known(FlightQuantity.SLOWEST_HALF_THROTTLE);
        Optional<Headline.Known> full = known(FlightQuantity.SLOWEST_FULL_THROTTLE);
        if (result.number(FlightQuantity.SLOWEST_FULL_THROTTLE) instanceof Headline.Unknown why
                && why.why().equals("why.hangs")) {
            said.add(Paragraph.say(why.why()));
        }
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
