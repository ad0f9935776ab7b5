package throwline.report.data;

import java.util.List;
import java.util.Optional;
import throwline.report.Sentences;
import throwline.report.TooCloseToCall;
import throwline.study.FieldAnswer;
import throwline.study.FieldAnswer.Legs;
import throwline.study.FlyResult;
import throwline.study.Handling;
import throwline.study.Handling.Gain;
import throwline.study.Handling.Loop;
import throwline.study.Handling.Moment;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Rank;
import throwline.study.Handling.Suggested;
import throwline.words.Message;

/** Landings, gust margins, pulls and moving surfaces of one set-up as JSON: SI units, angles in degrees, loads in g. */
final class HandlingJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final JsonWriter json;
    private final Sentences sentences;

    HandlingJson(JsonWriter json, Sentences sentences) {
        this.json = json;
        this.sentences = sentences;
    }

    void write(FlyResult result) {
        landing(result.glance().field());
        ranking(result.handling().ranking());
        margins(result.glance().field());
        json.key("pulls").array();
        result.handling().loops().forEach(this::pull);
        json.end();
        json.key("pullGains").array();
        result.handling().gains().forEach(this::gain);
        json.end();
        json.key("noPulls").array();
        result.handling().noLoops().forEach(this::note);
        json.end();
        moves(result.handling());
    }

    private void landing(FieldAnswer field) {
        json.key("landing").object();
        legs("stillAir", field.stillAir());
        legs("inWind", field.inWind());
        json.key("elevator");
        if (field.elevator().isPresent()) {
            FieldAnswer.FlareElevator e = field.elevator().get();
            json.shortObject();
            json.key("roundOut").value(e.roundOut() * DEGREE);
            json.key("touchdown").value(e.touchdown() * DEGREE);
            json.key("left").value(e.left() * DEGREE);
            json.key("endsBeforeWing").value(e.endsFirst());
            json.end();
        } else {
            json.nothing();
        }
        json.end();
    }

    private void legs(String key, Optional<Legs> found) {
        json.key(key);
        if (found.isEmpty()) {
            json.nothing();
            return;
        }
        Legs legs = found.get();
        json.object();
        json.key("wind").value(legs.wind());
        json.key("approach").value(legs.approach());
        json.key("clearsObstacle").value(legs.clearsObstacle());
        json.key("roundOutHeight").value(legs.roundOutHeight());
        json.key("roundOut").value(legs.roundOut());
        json.key("levelSpeed").value(legs.levelSpeed());
        json.key("sink").value(legs.sink());
        json.key("float").value(legs.floated());
        json.key("floatWithoutGround").value(legs.floatedWithoutGround());
        json.key("touchdownSpeed").value(legs.touchdownSpeed());
        json.key("roll").value(legs.roll());
        json.key("total").value(legs.touchdown() + legs.roll());
        json.key("windLost").value(legs.windLost());
        json.key("glideLow").value(legs.glideLow());
        json.key("glideLowWithoutGround").value(legs.glideWithoutGround());
        json.end();
    }

    private void ranking(List<Rank> ranking) {
        json.key("shortestLandings").array();
        for (Rank rank : ranking) {
            json.shortObject();
            json.key("setup").value(rank.setUp());
            json.key("value").value(rank.landing().value());
            json.key("low").value(rank.landing().low());
            json.key("high").value(rank.landing().high());
            json.end();
        }
        json.end();
        json.key("tooCloseToCall").array();
        TooCloseToCall.groups(ranking.stream()
                        .map(rank -> new TooCloseToCall.Entry(rank.setUp(), rank.landing()))
                        .toList())
                .forEach(group -> {
                    json.array();
                    group.forEach(json::value);
                    json.end();
                });
        json.end();
    }

    private void margins(FieldAnswer field) {
        json.key("gusts");
        if (field.margins().isEmpty()) {
            json.nothing();
            return;
        }
        FieldAnswer.Margins margins = field.margins().get();
        json.shortObject();
        json.key("speedLeft").value(margins.speed());
        json.key("angleLeft").value(margins.angle() * DEGREE);
        json.key("firstGust").value(margins.firstGust());
        json.key("loadOfTwoMetres").value(margins.usualLoad());
        json.key("headwindLimit").value(margins.headwindLimit());
        json.key("goodFor").value(Codes.of(margins.fitFor()));
        json.end();
    }

    private void pull(Loop loop) {
        json.object();
        json.key("stick").value(loop.stick());
        json.key("withoutFlaps").value(loop.withoutFlaps());
        json.key("speed").value(loop.speed());
        json.key("load").value(loop.load());
        json.key("limit").value(Codes.of(loop.limit()));
        json.key("wingLoad").value(loop.wingLoad());
        number("stickLoad", loop.elevatorLoad());
        number("tailLoad", loop.tailLoad());
        json.key("radius").value(loop.radius());
        json.key("turnRadius").value(loop.turnRadius());
        json.key("angleLeft").value(loop.angleLeft() * DEGREE);
        number("stallsAtStick", loop.stallShare());
        number("topSpeed", loop.topSpeed());
        number("endSpeed", loop.endSpeed());
        json.key("height").value(loop.height());
        json.end();
    }

    private void gain(Gain gain) {
        json.shortObject();
        json.key("stick").value(gain.stick());
        json.key("speed").value(gain.speed());
        json.key("radius").value(gain.with().value());
        json.key("radiusWithoutFlaps").value(gain.without().value());
        json.key("tooCloseToCall").value(gain.with().tooCloseTo(gain.without()));
        json.end();
    }

    private void note(Message note) {
        json.shortObject();
        json.key("code").value(note.code());
        json.key("text").value(sentences.say(note));
        json.end();
    }

    private void moves(Handling handling) {
        json.key("moves");
        if (handling.moves().isPresent()) {
            moves(handling.moves().get());
        } else {
            json.nothing();
        }
        json.key("noMoves");
        handling.noMoves().ifPresentOrElse(this::note, json::nothing);
    }

    private void moves(Moves moves) {
        json.object();
        Optional<Double> withoutMix = moves.suggested().stream()
                .filter(suggested -> suggested.mix().share() == 0)
                .findFirst()
                .flatMap(Suggested::time);
        number("suggestedTime", withoutMix);
        json.key("suggestedTimes").array();
        for (Suggested suggested : moves.suggested()) {
            json.shortObject();
            json.key("mix").value(suggested.mix().share());
            json.key("elevator").value(suggested.mix().elevator() * DEGREE);
            number("time", suggested.time());
            json.end();
        }
        json.end();
        json.key("lowerSpeed").value(moves.lowerSpeed());
        runs("lowering", moves.lowering());
        json.key("raiseSpeed").value(moves.raiseSpeed());
        json.key("pilotAfter").value(moves.terms().reaction());
        json.key("pilotWithin").value(moves.terms().hand());
        runs("raising", moves.raising());
        json.end();
    }

    private void runs(String key, List<Move> runs) {
        json.key(key).array();
        for (Move run : runs) {
            json.object();
            json.key("time").value(run.time());
            json.key("mix").value(run.mix().share());
            json.key("elevator").value(run.mix().elevator() * DEGREE);
            json.key("asked").value(run.mix().own());
            json.key("end").value(Codes.of(run.end()));
            number("rise", known(run, run.balloon()));
            number("drop", known(run, run.drop()));
            number("mostLoad", known(run, run.mostLoad()));
            number("leastLoad", known(run, run.leastLoad()));
            number("slowest", known(run, run.slowest()));
            number("fastest", known(run, run.fastest()));
            json.key("comesBack").value(Codes.of(run.comesBack()));
            number("heightLost", run.heightLost());
            json.key("history").array();
            for (Moment moment : run.history()) {
                json.shortObject();
                json.key("time").value(moment.time());
                json.key("moved").value(moment.moved());
                json.key("height").value(moment.height());
                json.key("offPath").value(moment.offPath());
                json.key("speed").value(moment.speed());
                json.key("load").value(moment.load());
                json.end();
            }
            json.end();
            json.end();
        }
        json.end();
    }

    private static Optional<Double> known(Move run, double number) {
        return run.followed() ? Optional.of(number) : Optional.empty();
    }

    private void number(String key, Optional<Double> number) {
        json.key(key);
        if (number.isPresent()) {
            json.value(number.get());
        } else {
            json.nothing();
        }
    }
}
