package throwline.report.data;

import java.util.List;
import java.util.Optional;
import throwline.model.Servo;
import throwline.report.EdgeThrow;
import throwline.report.ElevatorMixes;
import throwline.report.Headlines;
import throwline.report.SwingUse;
import throwline.study.Headline;
import throwline.study.ServoAnswer;
import throwline.study.ServoAnswer.LoadPoint;
import throwline.study.ServoAnswer.Position;
import throwline.study.ServoAnswer.SurfaceLoad;

/** Loads of the servos and where they stand: SI units, angles in degrees. */
final class ServoJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final CompareJson compare;

    ServoJson(CompareJson compare) {
        this.compare = compare;
    }

    /** The keys {@code elevatorStraight}, {@code servos}, {@code positions} and {@code mix} of a set-up. */
    void write(JsonWriter json, ServoAnswer answer, Headline elevator) {
        Optional<EdgeThrow> edge = answer.positions().stream()
                .filter(p -> p.surface().equals(Servo.ELEVATOR))
                .findFirst()
                .map(p -> new EdgeThrow(p.chord()));
        number(
                json,
                "elevatorStraight",
                Headlines.known(elevator).flatMap(known -> edge.map(e -> e.distance(known.value()))));
        json.key("servos").array();
        answer.loads().forEach(load -> load(json, load));
        json.end();
        json.key("positions").array();
        answer.positions().forEach(position -> position(json, position));
        json.end();
        json.key("mix");
        answer.mix().ifPresentOrElse(mix -> position(json, mix), json::nothing);
    }

    /** The key {@code mixes} of a pack: the elevator at three speeds. */
    static void mixes(JsonWriter json, List<ElevatorMixes.Mix> mixes) {
        json.key("mixes").array();
        for (ElevatorMixes.Mix mix : mixes) {
            json.shortObject();
            json.key("setup").value(mix.setUp());
            json.key("speed").value(mix.speed());
            json.key("elevator").value(mix.elevator() * DEGREE);
            json.key("change").value(mix.change() * DEGREE);
            json.key("half").value(mix.half() * DEGREE);
            json.key("elevatorStraight").value(mix.edge().distance(mix.elevator()));
            json.key("changeStraight").value(mix.edge().distance(mix.change()));
            json.key("halfStraight").value(mix.edge().distance(mix.half()));
            json.end();
        }
        json.end();
    }

    /** The key {@code swings} of a pack: how much of each known servo's swing all set-ups use. */
    static void swings(JsonWriter json, List<SwingUse> uses) {
        json.key("swings").array();
        for (SwingUse use : uses) {
            json.shortObject();
            json.key("surface").value(use.surface());
            json.key("low").value(use.low());
            json.key("high").value(use.high());
            number(json, "offset", use.offset().map(o -> o * DEGREE));
            json.end();
        }
        json.end();
    }

    private void load(JsonWriter json, SurfaceLoad load) {
        json.object();
        json.key("surface").value(load.surface());
        number(json, "rating", load.rating());
        json.key("assumedLinkage").value(load.assumedLinkage());
        compare.plain(json, "comingIn", load.comingIn());
        number(json, "halfRatingAt", load.halfRatingAt());
        json.key("overSpeed").array();
        for (LoadPoint point : load.overSpeed()) {
            json.shortObject();
            json.key("speed").value(point.speed());
            json.key("stick");
            text(json, point.stick());
            json.key("angle").value(point.deflection() * DEGREE);
            json.key("hinge").value(point.hinge());
            number(json, "torque", point.torque());
            json.end();
        }
        json.end();
        json.end();
    }

    private static void position(JsonWriter json, Position p) {
        EdgeThrow edge = new EdgeThrow(p.chord());
        json.shortObject();
        json.key("surface").value(p.surface());
        json.key("stick");
        text(json, p.stick());
        json.key("side").value(Codes.of(p.side()));
        json.key("angle").value(p.angle() * DEGREE);
        json.key("atItsStop").value(p.atItsStop());
        json.key("straight").value(edge.distance(p.angle()));
        json.key("vertical").value(edge.height(p.angle()));
        json.key("tolerance").value(edge.angleOf(EdgeThrow.TOLERANCE) * DEGREE);
        json.key("travel").value(p.travelShare());
        number(json, "servo", p.servo().map(s -> s * DEGREE));
        number(json, "swing", p.swingShare());
        json.key("reach").value(Codes.of(p.reach()));
        json.key("assumedLinkage").value(p.assumedLinkage());
        json.end();
    }

    private static void text(JsonWriter json, String text) {
        if (text.isEmpty()) {
            json.nothing();
        } else {
            json.value(text);
        }
    }

    private static void number(JsonWriter json, String key, Optional<Double> number) {
        json.key(key);
        if (number.isPresent()) {
            json.value(number.get());
        } else {
            json.nothing();
        }
    }
}
