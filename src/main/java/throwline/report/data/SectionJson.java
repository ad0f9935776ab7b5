package throwline.report.data;

import throwline.study.SectionSweep;

/** One section over angle of attack as JSON, format {@code section/1}: angles in degrees, coefficients. */
public final class SectionJson {

    /** One sweep. */
    public String write(SectionSweep sweep) {
        JsonWriter json = new JsonWriter();
        json.object();
        json.key("format").value("section/1");
        json.key("airfoil").value(sweep.airfoil());
        json.key("re").value(sweep.reynolds());
        json.key("flap").value(Math.toDegrees(sweep.flap()));
        json.key("flapChord").value(sweep.flapChord());
        json.key("maxLift").value(sweep.maxLift());
        json.key("minLift").value(sweep.minLift());
        json.key("stallAngle").value(Math.toDegrees(sweep.stallAngle()));
        json.key("points").array();
        for (SectionSweep.Point point : sweep.points()) {
            json.shortObject();
            json.key("angle").value(Math.toDegrees(point.angle()));
            json.key("lift").value(point.lift());
            json.key("drag").value(point.drag());
            json.key("moment").value(point.moment());
            json.key("hinge").value(point.hinge());
            json.key("basis").value(Codes.of(point.basis()));
            json.end();
        }
        json.end();
        json.end();
        return json.toString();
    }
}
