package throwline.report.data;

import java.util.Locale;
import java.util.Optional;
import throwline.correction.Doubt;
import throwline.logs.Piece;
import throwline.report.Sentences;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Learnt;
import throwline.study.LoggedDay;
import throwline.study.SetUpResult;

/** What flights told as JSON, format {@code learn/1}: SI units, angles in degrees. */
public final class LearnJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public LearnJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** The whole answer. */
    public String write(Learnt learnt) {
        JsonWriter json = new JsonWriter();
        json.object();
        json.key("format").value("learn/1");
        json.key("model").value(learnt.after().model().name());
        flights(json, Optional.of(learnt));
        json.key("packs").array();
        learnt.after().packs().forEach(pack -> pack(json, pack));
        json.end();
        json.key("measured").array();
        for (Learnt.Measured mark : learnt.measured()) {
            boolean angle = mark.quantity() != FlightQuantity.STALL_SPEED;
            double unit = angle ? Math.toDegrees(1) : 1;
            json.shortObject();
            json.key("setup").value(mark.setUp());
            json.key("number").value(mark.quantity().key());
            json.key("value").value(unit * mark.value());
            json.key("low").value(unit * mark.low());
            json.key("high").value(unit * mark.high());
            json.key("wrong").value(mark.wrong());
            json.end();
        }
        json.end();
        json.key("logs").array();
        learnt.logs().forEach(day -> log(json, day));
        json.end();
        json.key("next").array();
        for (Learnt.Advice advice : learnt.next()) {
            json.shortObject();
            json.key("what").value(advice.what());
            json.key("setup").value(advice.setUp());
            json.key("number").value(advice.quantity().key());
            boolean angle = advice.quantity() == FlightQuantity.ELEVATOR;
            double unit = angle ? Math.toDegrees(1) : 1;
            json.key("band").value(unit * advice.band());
            json.key("then").value(unit * advice.then());
            json.key("minutes").value(advice.minutes());
            json.end();
        }
        json.end();
        json.end();
        return json.toString();
    }

    private static void log(JsonWriter json, LoggedDay day) {
        json.object();
        json.key("flight").value(day.day().name());
        json.key("file").value(day.log().name());
        json.key("dropped").value(day.log().dropped());
        json.key("wind");
        day.log()
                .wind()
                .ifPresentOrElse(
                        wind -> {
                            json.shortObject();
                            json.key("speed").value(wind.speed());
                            json.key("from").value(Math.toDegrees(wind.from()));
                            json.key("sd").value(wind.sd());
                            json.key("source").value(wind.source().name().toLowerCase(Locale.ROOT));
                            json.end();
                        },
                        json::nothing);
        json.key("pieces").array();
        for (Piece piece : day.log().pieces()) {
            json.shortObject();
            json.key("number").value(piece.number());
            json.key("kind").value(piece.kind().name().toLowerCase(Locale.ROOT));
            json.key("setup").value(piece.setUp());
            json.key("from").value(piece.from());
            json.key("to").value(piece.to());
            json.key("used").value(piece.used());
            json.key("reason").value(piece.reason().name().toLowerCase(Locale.ROOT));
            if (!Double.isNaN(piece.speed())) {
                json.key("speed").value(piece.speed());
                json.key("found")
                        .value(piece.kind() == Piece.Kind.ROLL ? Math.toDegrees(piece.value()) : piece.value());
            }
            json.end();
        }
        json.end();
        json.end();
    }

    private void pack(JsonWriter json, PackResult pack) {
        RecordWriter records = new RecordWriter(json, sentences);
        json.object();
        json.key("name").value(pack.pack().name());
        json.key("setups").array();
        for (SetUpResult result : pack.setUps()) {
            json.object();
            json.key("name").value(result.setUp().name());
            result.headlines()
                    .all()
                    .forEach(entry -> records.write(
                            entry.stick().isEmpty()
                                    ? entry.quantity().key()
                                    : entry.quantity().key() + " " + entry.stick(),
                            entry.number(),
                            entry.quantity().dimension()));
            json.end();
        }
        json.end();
        json.end();
    }

    /** What an answer rests on, where flights put it right; nothing else is written. */
    static void flights(JsonWriter json, Optional<Learnt> learnt) {
        learnt.ifPresent(l -> {
            json.key("flights").object();
            json.key("count").value(l.flights());
            json.key("measurements").value(l.measurements());
            json.key("last").value(l.lastDate());
            json.key("doubts").array();
            for (Doubt doubt : l.doubts()) {
                json.shortObject();
                json.key("source").value(doubt.source());
                json.key("wrong").value(doubt.wrong());
                json.key("innovation").value(doubt.misses());
                json.end();
            }
            json.end();
            json.key("winds").array();
            for (Learnt.WindFound wind : l.winds()) {
                json.shortObject();
                json.key("flight").value(wind.day());
                json.key("told").value(wind.told());
                json.key("found").value(wind.found());
                json.key("sd").value(wind.sd());
                json.end();
            }
            json.end();
            json.end();
        });
    }
}
