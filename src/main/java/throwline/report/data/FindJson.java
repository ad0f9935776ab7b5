package throwline.report.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.report.BenchThrow;
import throwline.report.Sentences;
import throwline.sizing.CandidateFlight;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundThrow;
import throwline.sizing.LoopHelp;
import throwline.sizing.MixCurve;
import throwline.sizing.RollHelp;
import throwline.study.FindResult;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.LoopFound;
import throwline.study.FindResult.RollFound;
import throwline.study.FindResult.SetUpFound;
import throwline.study.FindResult.ThrowBand;
import throwline.study.FindResult.TrimFound;
import throwline.study.Learnt;
import throwline.units.Dimension;
import throwline.words.Message;

/** What must stand where, as JSON, format {@code find/1}: SI units, angles in degrees, trailing edge down positive. */
public final class FindJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final Sentences sentences;
    private final CompareJson compare;

    /** A writer with these words. */
    public FindJson(Sentences sentences) {
        this.sentences = sentences;
        compare = new CompareJson(sentences);
    }

    /** The document. */
    public String write(FindResult result) {
        return write(result, Optional.empty());
    }

    /** The same with what flights told. */
    public String write(FindResult result, Optional<Learnt> learnt) {
        JsonWriter json = new JsonWriter();
        json.object();
        json.key("format").value("find/1");
        json.key("model").value(result.model().name());
        LearnJson.flights(json, learnt);
        json.key("pack").shortObject();
        json.key("name").value(result.pack().name());
        json.key("weight").value(result.pack().mass());
        json.key("balance").value(result.pack().balance());
        json.end();
        json.key("met").value(result.isMet());
        json.key("setup");
        result.setUp().ifPresentOrElse(s -> setUp(json, result, s), json::nothing);
        json.key("roll");
        result.roll().ifPresentOrElse(r -> roll(json, result.model(), r), json::nothing);
        json.key("rollHelp");
        result.rollHelp().ifPresentOrElse(h -> help(json, h), json::nothing);
        json.key("tightestLoop");
        result.loop().ifPresentOrElse(l -> loop(json, l), json::nothing);
        new FoundPowerJson(json, sentences).write(result);
        json.key("levelTrim");
        result.levelTrim().ifPresentOrElse(t -> trim(json, result.model(), t), json::nothing);
        json.key("flown").array();
        result.flown().ifPresent(f -> f.packs().get(0).setUps().forEach(setUp -> compare.setUp(json, setUp)));
        json.end();
        List<Message> warnings = new ArrayList<>(result.notes());
        warnings.add(Message.of("note.assumed-bands"));
        warnings.addAll(result.beyondMeasured());
        records(json).write("warnings", warnings);
        json.end();
        return json.toString();
    }

    private void setUp(JsonWriter json, FindResult result, SetUpFound answer) {
        FoundSetUp found = answer.found();
        json.object();
        json.key("name").value(found.trial().setUp().name());
        json.key("met").value(found.met());
        records(json).write("why", found.why());
        json.key("surfaces").array();
        for (Surface surface : result.model().wing().surfaces()) {
            bench(
                    json,
                    BenchThrow.of(result.model(), surface, found.trial().setUp().deflection(surface.name())));
        }
        json.end();
        compare.plain(json, "stallSpeed", answer.stallSpeed());
        records(json).write("descentAngle", answer.descentAngle(), Dimension.ANGLE);
        records(json).write("elevatorChange", answer.elevatorChange(), Dimension.ANGLE);
        json.key("oneDegree").array();
        for (FoundSetUp.OneDegree one : found.oneDegree()) {
            json.shortObject();
            json.key("surface").value(one.flaps() ? "flaps" : "ailerons");
            json.key("step").value(one.step() * DEGREE);
            json.key("stallSpeed").value(one.stallSpeed());
            records(json).write("descentAngle", one.angle().map(a -> a * DEGREE));
            json.end();
        }
        json.end();
        json.key("throwBand");
        answer.throwBand().ifPresentOrElse(b -> band(json, found, b), json::nothing);
        trial(json, "least", found.least());
        trial(json, "most", found.most());
        records(json).write("stoppedBy", found.stoppedBy());
        json.end();
    }

    private static void band(JsonWriter json, FoundSetUp found, ThrowBand band) {
        json.shortObject();
        json.key("surface").value(found.lineIsFlaps() ? "flaps" : "ailerons");
        json.key("low").value(band.low() * DEGREE);
        json.key("high").value(band.high() * DEGREE);
        json.key("lowOpen").value(band.lowOpen());
        json.key("highOpen").value(band.highOpen());
        json.end();
    }

    private static void trial(JsonWriter json, String key, CandidateFlight trial) {
        json.key(key).shortObject();
        json.key("flaps").value(trial.flap() * DEGREE);
        json.key("ailerons").value(trial.aileron() * DEGREE);
        json.key("stallSpeed").value(trial.stallSpeed());
        json.key("descentAngle").value(trial.angle() * DEGREE);
        json.end();
    }

    private void roll(JsonWriter json, Model model, RollFound answer) {
        json.object();
        json.key("setup").value(answer.in().name());
        json.key("met").value(answer.found().map(FoundThrow::met).orElse(false));
        records(json).write("why", answer.found().map(FoundThrow::why).orElse(List.of()));
        json.key("throws").array();
        answer.found().ifPresent(f -> moves(json, model, f.stick()));
        json.end();
        compare.angle(json, "rate", answer.rate());
        records(json).write("rateAtStops", answer.found().map(f -> f.rateAtStops() * DEGREE));
        records(json).write("oneDegree", answer.found().map(f -> f.perDegree() * DEGREE));
        records(json).write("yawing", answer.found().map(FoundThrow::yawing));
        json.end();
    }

    private static void moves(JsonWriter json, Model model, Stick.Roll stick) {
        for (Map.Entry<String, Stick.Throws> moved : stick.throwsBySurface().entrySet()) {
            model.wing().surfaces().stream()
                    .filter(s -> s.name().equals(moved.getKey()))
                    .forEach(s -> {
                        json.shortObject();
                        json.key("surface").value(s.name());
                        json.key("up").value(moved.getValue().up() * DEGREE);
                        json.key("upDistance")
                                .value(-BenchThrow.of(
                                                model, s, -moved.getValue().up())
                                        .distance());
                        json.key("down").value(moved.getValue().down() * DEGREE);
                        json.key("downDistance")
                                .value(BenchThrow.of(model, s, moved.getValue().down())
                                        .distance());
                        json.end();
                    });
        }
    }

    private void help(JsonWriter json, HelpFound answer) {
        json.object();
        json.key("setup").value(answer.in().name());
        json.key("stick").value(answer.helped().name());
        records(json).write("speed", answer.help().map(RollHelp::speed));
        compare.angle(json, "without", answer.without());
        compare.angle(json, "with", answer.with());
        records(json)
                .write(
                        "stoppedBy",
                        answer.help().map(RollHelp::stoppedBy).stream().toList());
        json.key("points").array();
        for (RollHelp.Point point : answer.help().map(RollHelp::points).orElse(List.of())) {
            json.shortObject();
            json.key("flapUp").value(point.flapUp() * DEGREE);
            json.key("flapDown").value(point.flapDown() * DEGREE);
            json.key("rate").value(point.rate() * DEGREE);
            json.key("yawing").value(point.yawing());
            json.end();
        }
        json.end();
        json.end();
    }

    private void loop(JsonWriter json, LoopFound answer) {
        json.object();
        json.key("setup").value(answer.in().name());
        records(json).write("speed", answer.help().map(LoopHelp::speed));
        compare.plain(json, "without", answer.without());
        compare.plain(json, "radius", answer.radius());
        json.key("getsRound").value(Codes.of(answer.round()));
        records(json).write("stoppedBy", answer.help().map(LoopHelp::stoppedBy).orElse(List.of()));
        answer.help().ifPresent(help -> {
            json.key("own");
            pull(json, help.own());
            json.key("best");
            pull(json, help.best());
            json.key("points").array();
            help.points().forEach(p -> pull(json, p));
            json.end();
            records(json).write("stallsBelow", help.stallsBelow());
            json.key("atSpeeds").array();
            for (LoopHelp.AtSpeed at : help.atSpeeds()) {
                json.object();
                json.key("speed").value(at.speed());
                json.key("without");
                pull(json, at.without());
                json.key("with");
                pull(json, at.with());
                json.end();
            }
            json.end();
        });
        json.end();
    }

    private static void pull(JsonWriter json, LoopHelp.Pull pull) {
        json.shortObject();
        json.key("flapDown").value(pull.flap() * DEGREE);
        json.key("elevatorUp").value(pull.elevator() * DEGREE);
        json.key("load").value(pull.load());
        json.key("radius").value(pull.radius());
        json.key("setBy").value(Codes.of(pull.setBy()));
        json.key("angleLeft").value(pull.angleLeft() * DEGREE);
        json.end();
    }

    private void trim(JsonWriter json, Model model, TrimFound answer) {
        json.object();
        json.key("from").value(answer.from().name());
        json.key("to").value(answer.to().name());
        records(json).write("speed", answer.curve().map(MixCurve::speed));
        compare.angle(json, "whole", answer.whole());
        json.key("points").array();
        for (MixCurve.Point point : answer.curve().map(MixCurve::points).orElse(List.of())) {
            BenchThrow bench = BenchThrow.ofElevator(model, "elevator", point.elevator());
            json.shortObject();
            json.key("lever").value(point.lever());
            json.key("elevator").value(point.elevator() * DEGREE);
            json.key("distance").value(bench.distance());
            json.key("travelShare").value(bench.share());
            json.key("firstFlight").value(answer.start(point) * DEGREE);
            json.end();
        }
        json.end();
        records(json).write("straightError", answer.curve().map(c -> c.straightError() * DEGREE));
        json.key("otherSpeeds").array();
        for (MixCurve.AtSpeed other : answer.curve().map(MixCurve::otherSpeeds).orElse(List.of())) {
            json.shortObject();
            json.key("speed").value(other.speed());
            json.key("elevator").value(other.elevator() * DEGREE);
            json.end();
        }
        json.end();
        records(json).write("shortOf", answer.shortOf());
        json.end();
    }

    private static void bench(JsonWriter json, BenchThrow bench) {
        json.shortObject();
        json.key("name").value(bench.surface());
        json.key("angle").value(bench.angle() * DEGREE);
        json.key("distance").value(bench.distance());
        json.key("travelShare").value(bench.share());
        json.end();
    }

    private RecordWriter records(JsonWriter json) {
        return new RecordWriter(json, sentences);
    }
}
