package throwline.report.data;

import java.util.List;
import java.util.Optional;
import throwline.report.TooCloseToCall;
import throwline.study.FieldAnswer;
import throwline.study.FieldAnswer.Legs;
import throwline.study.FlyResult;
import throwline.study.Handling;
import throwline.study.Handling.Loop;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Rank;

/** Landings, gust margins, pulls and moving surfaces of one set-up as JSON: SI units, angles in degrees, loads in g. */
final class HandlingJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final JsonWriter json;

    HandlingJson(JsonWriter json) {
        this.json = json;
    }

    void write(FlyResult result) {
        landing(result.glance().field());
        ranking(result.handling().ranking());
        margins(result.glance().field());
        json.key("pulls").array();
        result.handling().loops().forEach(this::pull);
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

    private void moves(Handling handling) {
        json.key("moves");
        if (handling.moves().isEmpty()) {
            json.nothing();
            return;
        }
        Moves moves = handling.moves().get();
        json.object();
        number("suggestedTime", moves.suggestedTime());
        json.key("lowerSpeed").value(moves.lowerSpeed());
        runs("lowering", moves.lowering());
        json.key("raiseSpeed").value(moves.raiseSpeed());
        runs("raising", moves.raising());
        json.end();
    }

    private void runs(String key, List<Move> runs) {
        json.key(key).array();
        for (Move run : runs) {
            json.shortObject();
            json.key("time").value(run.time());
            json.key("mix").value(run.mix());
            number("rise", known(run, run.balloon()));
            number("drop", known(run, run.drop()));
            number("mostLoad", known(run, run.mostLoad()));
            number("leastLoad", known(run, run.leastLoad()));
            number("slowest", known(run, run.slowest()));
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
