package throwline.report.data;

import java.util.List;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.report.Sentences;
import throwline.sizing.FoundClimb;
import throwline.sizing.FoundTakeOff;
import throwline.study.FindResult;
import throwline.study.FindResult.ClimbFound;
import throwline.study.FindResult.TakeOffFound;
import throwline.units.Dimension;

/** What was found for take-off and climb, as JSON: in SI units, angles in degrees. */
final class FoundPowerJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final JsonWriter json;
    private final RecordWriter records;

    FoundPowerJson(JsonWriter json, Sentences sentences) {
        this.json = json;
        records = new RecordWriter(json, sentences);
    }

    /** Both answers, null where they were not wanted. */
    void write(FindResult result) {
        json.key("takeOff");
        result.takeOff().ifPresentOrElse(answer -> takeOff(result.model(), answer), json::nothing);
        json.key("climb");
        result.climb().ifPresentOrElse(this::climb, json::nothing);
    }

    private void takeOff(Model model, TakeOffFound answer) {
        json.object();
        json.key("met").value(answer.found().map(FoundTakeOff::met).orElse(false));
        records.write("why", answer.found().map(FoundTakeOff::why).orElse(List.of()));
        json.key("setup");
        answer.proposed().ifPresentOrElse(setUp -> json.value(setUp.name()), json::nothing);
        json.key("surfaces").array();
        answer.found().ifPresent(found -> {
            for (Surface surface : model.wing().surfaces()) {
                json.shortObject();
                json.key("name").value(surface.name());
                json.key("angle").value(DEGREE * found.found().setUp().deflection(surface.name()));
                json.end();
            }
        });
        json.end();
        records.write("run", answer.run());
        records.write("distance", answer.distance());
        records.write("runWithoutFlap", answer.clean());
        records.write("flap", answer.throwBand().map(Throws::of));
        json.key("line").array();
        for (FoundTakeOff.Trial trial : answer.found().map(FoundTakeOff::line).orElse(List.of())) {
            json.shortObject();
            json.key("flap").value(DEGREE * trial.flap());
            json.key("run").value(trial.run());
            json.end();
        }
        json.end();
        json.end();
    }

    /** Angles of the flaps, in degrees. */
    private record Throws(double low, double high, boolean highOpen) {
        static Throws of(FindResult.ThrowBand band) {
            return new Throws(DEGREE * band.low(), DEGREE * band.high(), band.highOpen());
        }
    }

    private void climb(ClimbFound answer) {
        FoundClimb found = answer.found();
        json.object();
        json.key("setup").value(found.in().name());
        json.key("met").value(found.met());
        records.write("why", found.why());
        records.write("rate", answer.rate());
        records.write("angle", answer.angle(), Dimension.ANGLE);
        records.write("speed", found.full().map(FoundClimb.Climb::speed));
        records.write("throttle", found.enough().map(FoundClimb.Climb::throttle));
        records.write("throttleSpeed", found.enough().map(FoundClimb.Climb::speed));
        records.write("mostFlap", found.mostFlap(), Dimension.ANGLE);
        json.key("mostFlapIsTheEnd").value(found.flapsEnd());
        json.key("best");
        found.best().ifPresentOrElse(this::best, json::nothing);
        json.end();
    }

    private void best(FoundClimb.Trial best) {
        json.shortObject();
        json.key("flap").value(DEGREE * best.flap());
        json.key("rate").value(best.climb().rate());
        json.key("angle").value(DEGREE * best.climb().angle());
        json.end();
    }
}
