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
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Rank;
import throwline.study.Handling.Suggested;

/** Landings, gust margins, pulls and moving surfaces of one set-up as JSON: SI units, angles in degrees, loads in g. */
final class HandlingJson {

    private static final double DEGREE = Math.toDegrees(1);

    private final JsonWriter json;
    private final RecordWriter records;

    HandlingJson(JsonWriter json, Sentences sentences) {
        this.json = json;
        records = new RecordWriter(json, sentences);
    }

    void write(FlyResult result) {
        landing(result.glance().field());
        ranking(result.handling().ranking());
        records.write("gusts", result.glance().field().margins());
        records.write("pulls", result.handling().loops());
        json.key("pullGains").array();
        result.handling().gains().forEach(this::gain);
        json.end();
        records.write("noPulls", result.handling().noLoops());
        moves(result.handling());
    }

    private void landing(FieldAnswer field) {
        json.key("landing").object();
        legs("stillAir", field.stillAir());
        legs("inWind", field.inWind());
        records.write("elevator", field.elevator());
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
        records.components(legs);
        json.key("total").value(legs.total());
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

    private void gain(Gain gain) {
        json.shortObject();
        json.key("stick").value(gain.stick());
        json.key("speed").value(gain.speed());
        json.key("radius").value(gain.with().value());
        json.key("radiusWithoutFlaps").value(gain.without().value());
        json.key("tooCloseToCall").value(gain.with().tooCloseTo(gain.without()));
        json.end();
    }

    private void moves(Handling handling) {
        json.key("moves");
        if (handling.moves().isPresent()) {
            moves(handling.moves().get());
        } else {
            json.nothing();
        }
        records.write("noMoves", handling.noMoves());
    }

    private void moves(Moves moves) {
        json.object();
        Optional<Double> withoutMix = moves.suggested().stream()
                .filter(suggested -> suggested.mix().share() == 0)
                .findFirst()
                .flatMap(Suggested::time);
        records.write("suggestedTime", withoutMix);
        json.key("suggestedTimes").array();
        for (Suggested suggested : moves.suggested()) {
            json.shortObject();
            json.key("mix").value(suggested.mix().share());
            json.key("elevator").value(suggested.mix().elevator() * DEGREE);
            records.write("time", suggested.time());
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
            records.write("rise", known(run, run.balloon()));
            records.write("drop", known(run, run.drop()));
            records.write("mostLoad", known(run, run.mostLoad()));
            records.write("leastLoad", known(run, run.leastLoad()));
            records.write("slowest", known(run, run.slowest()));
            records.write("fastest", known(run, run.fastest()));
            json.key("comesBack").value(Codes.of(run.comesBack()));
            records.write("heightLost", run.heightLost());
            records.write("history", run.history());
            json.end();
        }
        json.end();
    }

    private static Optional<Double> known(Move run, double number) {
        return run.followed() ? Optional.of(number) : Optional.empty();
    }
}
