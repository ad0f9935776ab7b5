package throwline.report.data;

import java.util.Locale;
import java.util.Optional;
import throwline.report.Sentences;
import throwline.study.FlyResult;
import throwline.study.FlyResult.Balance;
import throwline.study.FlyResult.Descents;
import throwline.study.FlyResult.RollDetail;
import throwline.study.FlyResult.Why;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.units.Dimension;

/** One set-up in depth as JSON, format {@code fly/1}: SI units, angles in degrees. */
public final class FlyJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final CompareJson compare;
    private final Sentences sentences;

    /** A writer with these words. */
    public FlyJson(Sentences sentences) {
        compare = new CompareJson(sentences);
        this.sentences = sentences;
    }

    /** The document. */
    public String write(FlyResult result) {
        JsonWriter json = new JsonWriter();
        json.object();
        json.key("format").value("fly/1");
        json.key("model").value(result.model().name());
        json.key("pack").shortObject();
        json.key("name").value(result.pack().name());
        json.key("weight").value(result.pack().mass());
        json.key("balance").value(result.pack().balance());
        json.end();
        json.key("setup");
        compare.setUp(json, result.glance());
        balance(json, result.balance());
        turns(json, result);
        json.key("rolls").array();
        result.rolls().forEach(roll -> roll(json, roll));
        json.end();
        descents(json, result.descents());
        sweeps(json, result);
        new HandlingJson(json, sentences).write(result);
        matters(json, result);
        new StandingJson(json).write(result.standing());
        json.end();
        return json.toString();
    }

    private void balance(JsonWriter json, Optional<Balance> balance) {
        json.key("balance");
        if (balance.isEmpty()) {
            json.nothing();
            return;
        }
        Balance b = balance.get();
        json.object();
        number(json, "stabilityMargin", b.stabilityMargin());
        number(json, "neutralPoint", b.neutralPoint());
        json.key("tailStallMargin").value(b.tailMargin() * DEGREE);
        json.key("cruiseSpeed").value(b.cruiseSpeed());
        compare.angle(json, "elevatorAtCruise", b.elevatorAtCruise());
        json.key("elevatorChangeWhy");
        if (b.why().isEmpty()) {
            json.nothing();
        } else {
            Why why = b.why().get();
            json.shortObject();
            json.key("camber").value(why.camber() * DEGREE);
            json.key("downwash").value(why.downwash() * DEGREE);
            json.key("dragArm").value(why.dragArm() * DEGREE);
            json.key("wake").value(why.wake() * DEGREE);
            json.key("attitude").value(why.attitude() * DEGREE);
            json.key("rest").value(why.rest() * DEGREE);
            json.end();
        }
        json.end();
    }

    private static void matters(JsonWriter json, FlyResult result) {
        json.key("matters").array();
        for (FlyResult.Sensitivity matter : result.matters()) {
            boolean speed = matter.effect().dimension() == Dimension.SPEED;
            json.shortObject();
            json.key("what").value(matter.what());
            json.key("name").value(matter.name());
            json.key("number").value(matter.number());
            json.key("effect").value(matter.effect().value() * (speed ? 1 : DEGREE));
            json.end();
        }
        json.end();
    }

    private void turns(JsonWriter json, FlyResult result) {
        json.key("turns").array();
        for (FlyResult.Turn turn : result.turns()) {
            json.object();
            json.key("bank").value(turn.bank() * DEGREE);
            compare.plain(json, "stallSpeed", turn.stallSpeed());
            json.key("heldByElevator").value(turn.heldByElevator());
            json.end();
        }
        json.end();
    }

    private void roll(JsonWriter json, RollDetail roll) {
        json.object();
        json.key("stick").value(roll.stick());
        compare.angle(json, "rate", roll.rate());
        number(json, "timeToNinety", roll.timeToNinety());
        number(json, "yawing", roll.yawing());
        json.key("atItsStop").value(roll.atItsStop());
        number(json, "letsGoAt", roll.letsGoAt());
        number(json, "letsGoWhere", roll.letsGoWhere());
        json.end();
    }

    private static void number(JsonWriter json, String key, Optional<Double> number) {
        json.key(key);
        if (number.isPresent()) {
            json.value(number.get());
        } else {
            json.nothing();
        }
    }

    private void descents(JsonWriter json, Optional<Descents> descents) {
        json.key("descents");
        if (descents.isEmpty()) {
            json.nothing();
            return;
        }
        Descents d = descents.get();
        json.shortObject();
        json.key("wind").value(d.wind());
        number(json, "overGround", d.overGround().map(a -> a * DEGREE));
        json.key("limitSpeed").value(d.limitSpeed());
        number(json, "steepest", d.steepest().map(a -> a * DEGREE));
        number(json, "steepestSpeed", d.steepestSpeed());
        json.key("otherPropellers").array();
        for (FlyResult.OtherPropeller other : d.propellers()) {
            json.object();
            json.key("throttleShut").value(other.shut().name().toLowerCase(Locale.ROOT));
            compare.angle(json, "descentAngle", other.descentAngle());
            json.end();
        }
        json.end();
        json.end();
    }

    private static void sweeps(JsonWriter json, FlyResult result) {
        json.key("sweep").array();
        for (SpeedPoint point : result.glance().sweep()) {
            json.shortObject();
            json.key("speed").value(point.speed());
            json.key("descentAngle").value(point.descentAngle() * DEGREE);
            json.key("sinkRate").value(point.sinkRate());
            json.key("lift").value(point.lift());
            json.key("drag").value(point.drag());
            json.key("elevator").value(point.elevator() * DEGREE);
            json.end();
        }
        json.end();
        json.key("rollSweep").array();
        for (FlyResult.RollPoint point : result.rollSweep()) {
            json.shortObject();
            json.key("speed").value(point.speed());
            json.key("rate").value(point.rate() * DEGREE);
            json.end();
        }
        json.end();
    }
}
