package throwline.report.data;

import throwline.study.WingSweep;

/** The bare wing over incidence as JSON, format {@code wing/1}: SI units, angles in degrees, coefficients. */
public final class WingJson {

    /** One sweep. */
    public String write(WingSweep sweep) {
        JsonWriter json = new JsonWriter();
        json.object();
        json.key("format").value("wing/1");
        json.key("area").value(sweep.area());
        json.key("span").value(sweep.span());
        json.key("meanChord").value(sweep.meanChord());
        json.key("points").array();
        sweep.points().forEach(point -> point(json, point));
        json.end();
        sweep.stall().ifPresent(stall -> {
            json.key("stall").object();
            mark(json, "onset", stall.onset());
            json.key("onsetAt").value(stall.at());
            mark(json, "checkedMaximum", stall.checkedMaximum());
            mark(json, "plateau", stall.plateau());
            json.end();
        });
        json.end();
        return json.toString();
    }

    private static void mark(JsonWriter json, String name, WingSweep.Mark mark) {
        json.key(name).shortObject();
        json.key("incidence").value(Math.toDegrees(mark.incidence()));
        json.key("lift").value(mark.lift());
        json.end();
    }

    private static void point(JsonWriter json, WingSweep.Point point) {
        json.object();
        json.key("incidence").value(Math.toDegrees(point.incidence()));
        json.key("lift").value(point.lift());
        json.key("drag").value(point.drag());
        json.key("inducedDrag").value(point.inducedDrag());
        json.key("profileDrag").value(point.profileDrag());
        json.key("rolling").value(point.rolling());
        json.key("yawing").value(point.yawing());
        json.key("pitching").value(point.pitching());
        json.key("converged").value(point.converged());
        json.key("iterations").value(point.iterations());
        json.key("strips").array();
        for (WingSweep.Strip strip : point.strips()) {
            json.shortObject();
            json.key("at").value(strip.at());
            json.key("width").value(strip.width());
            json.key("chord").value(strip.chord());
            json.key("lift").value(strip.lift());
            json.key("limit").value(strip.limit());
            json.key("localIncidence").value(Math.toDegrees(strip.localIncidence()));
            json.key("deflection").value(Math.toDegrees(strip.deflection()));
            json.key("margin").value(Math.toDegrees(strip.margin()));
            json.key("hinge").value(strip.hinge());
            json.end();
        }
        json.end();
        json.end();
    }
}
