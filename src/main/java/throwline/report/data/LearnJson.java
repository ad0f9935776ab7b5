package throwline.report.data;

import java.util.List;
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
import throwline.units.Dimension;
import throwline.units.Quantity;

/** Lessons of flights as JSON, format {@code learn/1}: SI units, angles in degrees. */
public final class LearnJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public LearnJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** The whole answer. */
    public String write(Learnt learnt) {
        RecordWriter json = new RecordWriter(sentences);
        json.object(() -> {
            json.write("format", "learn/1");
            json.write("model", learnt.after().model().name());
            flights(json, Optional.of(learnt));
            json.objects("packs", learnt.after().packs(), pack -> pack(json, pack));
            json.write("measured", learnt.measured().stream().map(Mark::of).toList());
            json.objects("logs", learnt.logs(), day -> log(json, day));
            json.write("next", learnt.next().stream().map(Next::of).toList());
        });
        return json.toString();
    }

    private record Mark(
            String setup, FlightQuantity number, Quantity value, Quantity low, Quantity high, boolean wrong) {
        static Mark of(Learnt.Measured mark) {
            Dimension kind = mark.quantity().dimension();
            return new Mark(
                    mark.setUp(),
                    mark.quantity(),
                    new Quantity(mark.value(), kind),
                    new Quantity(mark.low(), kind),
                    new Quantity(mark.high(), kind),
                    mark.wrong());
        }
    }

    private record Next(
            String what, String setup, FlightQuantity number, Quantity band, Quantity then, double minutes) {
        static Next of(Learnt.Advice advice) {
            Dimension kind = advice.quantity() == FlightQuantity.ELEVATOR ? Dimension.ANGLE : Dimension.FRACTION;
            return new Next(
                    advice.what(),
                    advice.setUp(),
                    advice.quantity(),
                    new Quantity(advice.band(), kind),
                    new Quantity(advice.then(), kind),
                    advice.minutes());
        }
    }

    private static void log(RecordWriter json, LoggedDay day) {
        json.write("flight", day.day().name());
        json.write("file", day.log().name());
        json.write("dropped", day.log().dropped());
        json.write("wind", day.log().wind());
        json.shortObjects("pieces", day.pieces(), piece -> piece(json, piece));
    }

    private static void piece(RecordWriter json, Piece piece) {
        json.write("number", piece.number());
        json.write("kind", piece.kind());
        json.write("setup", piece.setUp());
        json.write("from", piece.from());
        json.write("to", piece.to());
        json.write("used", piece.used());
        json.write("reason", piece.reason().name().toLowerCase(Locale.ROOT));
        if (!Double.isNaN(piece.speed())) {
            json.write("speed", piece.speed());
            json.write(
                    "found", piece.value(), piece.kind() == Piece.Kind.ROLL ? Dimension.ANGULAR_RATE : Dimension.SPEED);
        }
    }

    private static void pack(RecordWriter json, PackResult pack) {
        json.write("name", pack.pack().name());
        json.objects("setups", pack.setUps(), result -> setUp(json, result));
    }

    private static void setUp(RecordWriter json, SetUpResult result) {
        json.write("name", result.setUp());
        result.headlines()
                .all()
                .forEach(entry -> json.write(
                        String.join(" ", entry.quantity().key(), entry.stick()).strip(),
                        entry.number(),
                        entry.quantity().dimension()));
    }

    private record Flights(
            int count, int measurements, String last, List<Doubt> doubts, List<Learnt.WindFound> winds) {}

    /** What an answer rests on, where flights put it right; nothing else is written. */
    static void flights(RecordWriter json, Optional<Learnt> learnt) {
        learnt.ifPresent(l ->
                json.write("flights", new Flights(l.flights(), l.measurements(), l.lastDate(), l.doubts(), l.winds())));
    }
}
