package throwline.report.data;

import java.util.Optional;
import throwline.report.EdgeThrow;
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

    /** The keys {@code servos} and {@code positions}. */
    void write(JsonWriter json, ServoAnswer answer) {
        json.key("servos").array();
        answer.loads().forEach(load -> load(json, load));
        json.end();
        json.key("positions").array();
        answer.positions().forEach(position -> position(json, position));
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
