package throwline.report.data;

import java.util.Optional;
import throwline.report.Sentences;
import throwline.study.FlyResult;
import throwline.study.Learnt;

/** One set-up in depth as JSON, format {@code fly/1}: SI units, angles in degrees. */
public final class FlyJson {

    private final CompareJson compare;
    private final Sentences sentences;

    /** A writer with these words. */
    public FlyJson(Sentences sentences) {
        compare = new CompareJson(sentences);
        this.sentences = sentences;
    }

    /** The document. */
    public String write(FlyResult result) {
        return write(result, Optional.empty());
    }

    /** The document, with what flights told. */
    public String write(FlyResult result, Optional<Learnt> learnt) {
        JsonWriter json = new JsonWriter();
        json.object();
        json.key("format").value("fly/1");
        json.key("model").value(result.model().name());
        LearnJson.flights(json, learnt);
        json.key("pack").shortObject();
        json.key("name").value(result.pack().name());
        json.key("weight").value(result.pack().mass());
        json.key("balance").value(result.pack().balance());
        json.end();
        json.key("setup");
        compare.setUp(json, result.glance());
        RecordWriter records = new RecordWriter(json, sentences);
        records.write("balance", result.balance());
        records.write("turns", result.turns());
        records.write("rolls", result.rolls());
        records.write("descents", result.descents());
        records.write("sweep", result.glance().sweep());
        records.write("rollSweep", result.rollSweep());
        records.write("level", result.level());
        new HandlingJson(json, sentences).write(result);
        records.write("matters", result.matters());
        new StandingJson(json).write(result.standing());
        json.end();
        return json.toString();
    }
}
