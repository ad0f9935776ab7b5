package throwline.report.data;

import java.util.List;
import throwline.model.Assumption;
import throwline.model.Model;
import throwline.report.CompareAnswer;
import throwline.report.ElevatorMixes;
import throwline.report.Sentences;
import throwline.report.SwingUse;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.units.Dimension;

/** Comparisons as JSON, format {@code compare/1}: SI units, angles in degrees. */
public final class CompareJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public CompareJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** One model: an object; several: an array of such objects. */
    public String write(List<CompareAnswer> answers) {
        JsonWriter json = new JsonWriter();
        if (answers.size() == 1) {
            answer(json, answers.get(0));
        } else {
            json.array();
            answers.forEach(answer -> answer(json, answer));
            json.end();
        }
        return json.toString();
    }

    private void answer(JsonWriter json, CompareAnswer answer) {
        json.object();
        json.key("format").value("compare/1");
        json.key("model").value(answer.comparison().model().name());
        LearnJson.flights(json, answer.learnt());
        json.key("packs").array();
        answer.comparison()
                .packs()
                .forEach(pack -> pack(json, answer.comparison().model(), pack));
        json.end();
        json.key("assumed").array();
        for (Assumption assumption : answer.assumed()) {
            json.shortObject();
            json.key("path").value(assumption.path());
            json.key("value").value(assumption.value());
            json.end();
        }
        json.end();
        new RecordWriter(json, sentences).write("warnings", answer.comparison().warnings());
        json.end();
    }

    private void pack(JsonWriter json, Model model, PackResult result) {
        json.object();
        json.key("name").value(result.pack().name());
        json.key("weight").value(result.pack().mass());
        json.key("balance").value(result.pack().balance());
        json.key("setups").array();
        result.setUps().forEach(setUp -> setUp(json, setUp));
        json.end();
        ServoJson.mixes(json, ElevatorMixes.of(model, result.setUps()));
        ServoJson.swings(json, SwingUse.of(model, result.setUps()));
        json.end();
    }

    void setUp(JsonWriter json, SetUpResult result) {
        json.object();
        json.key("name").value(result.setUp().name());
        for (FlightQuantity quantity : FlightQuantity.values()) {
            quantity(json, quantity, result.headlines());
        }
        json.key("firstStall");
        firstStall(json, result.firstStall());
        new ServoJson(this).write(json, result.servos(), result.elevator());
        RecordWriter records = new RecordWriter(json, sentences);
        records.write("oneSided", result.oneSided());
        records.write("notes", result.notes());
        json.end();
    }

    private void quantity(JsonWriter json, FlightQuantity quantity, HeadlineNumbers numbers) {
        RecordWriter records = new RecordWriter(json, sentences);
        if (quantity == FlightQuantity.ROLL_RATE) {
            json.key(quantity.key()).object();
            numbers.of(quantity).forEach(entry -> records.write(entry.stick(), entry.number(), quantity.dimension()));
            json.end();
        } else {
            records.write(quantity.key(), numbers.number(quantity), quantity.dimension());
        }
    }

    private static void firstStall(JsonWriter json, FirstStall stall) {
        if (stall.manner() == SetUpResult.Manner.NOT_REACHED) {
            json.nothing();
            return;
        }
        json.shortObject();
        json.key("side").value(Codes.of(stall.side()));
        json.key("spanFraction").value(stall.spanFraction());
        json.key("surface");
        if (stall.surface().isEmpty()) {
            json.nothing();
        } else {
            json.value(stall.surface());
        }
        json.end();
    }

    void plain(JsonWriter json, String key, Headline headline) {
        new RecordWriter(json, sentences).write(key, headline);
    }

    void angle(JsonWriter json, String key, Headline headline) {
        new RecordWriter(json, sentences).write(key, headline, Dimension.ANGLE);
    }
}
