package throwline.report.data;

import java.util.Optional;
import throwline.report.EdgeThrow;
import throwline.study.BlowBackResult;
import throwline.study.BlowBackResult.Point;
import throwline.study.BlowBackResult.Row;

/** Where the surfaces really stand: SI units, angles in degrees. */
final class StandingJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final JsonWriter json;

    StandingJson(JsonWriter json) {
        this.json = json;
    }

    /** The key {@code standing}: one entry a surface, side and stick that the set-up or the stick moves from neutral. */
    void write(BlowBackResult answer) {
        json.key("standing").array();
        answer.rows().forEach(this::row);
        json.end();
    }

    private void row(Row row) {
        EdgeThrow edge = new EdgeThrow(row.chord());
        json.object();
        json.key("surface").value(row.surface());
        json.key("stick");
        if (row.stick().isEmpty()) {
            json.nothing();
        } else {
            json.value(row.stick());
        }
        json.key("side").value(Codes.of(row.side()));
        json.key("programmed").value(row.told() * DEGREE);
        json.key("bench").value(row.bench() * DEGREE);
        json.key("benchStraight").value(edge.distance(row.bench()));
        json.key("actsLikeShare").value(row.gapShare());
        json.key("torqueGiven").value(row.rated());
        json.key("overSpeed").array();
        for (Point point : row.overSpeed()) {
            json.shortObject();
            json.key("speed").value(point.speed());
            json.key("angle").value(point.angle() * DEGREE);
            json.key("straight").value(edge.distance(point.angle()));
            perhaps(point.perhaps());
            json.key("hold").value(Codes.of(point.hold()));
            json.end();
        }
        json.end();
        json.end();
    }

    private void perhaps(Optional<Double> angle) {
        json.key("perhaps");
        if (angle.isPresent()) {
            json.value(angle.get() * DEGREE);
        } else {
            json.nothing();
        }
    }
}
