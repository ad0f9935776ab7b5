package throwline.report.data;

import java.util.Optional;
import throwline.report.Sentences;
import throwline.study.FlyResult;
import throwline.study.Learnt;

/** Set-up in depth as JSON, format {@code fly/1}: SI units, angles in degrees. */
public final class FlyJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public FlyJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** The document. */
    public String write(FlyResult result) {
        return write(result, Optional.empty());
    }

    /** The document, with what flights told. */
    public String write(FlyResult result, Optional<Learnt> learnt) {
        RecordWriter json = new RecordWriter(sentences);
        json.object(() -> {
            json.write("format", "fly/1");
            json.write("model", result.model().name());
            LearnJson.flights(json, learnt);
            json.write("pack", result.pack());
            json.write("setup", result.glance());
            json.write("balance", result.balance());
            json.write("turns", result.turns());
            json.write("rolls", result.rolls());
            json.write("descents", result.descents());
            json.write("sweep", result.glance().sweep());
            json.write("rollSweep", result.rollSweep());
            json.write("level", result.level());
            json.write("landing", result.glance().field());
            new HandlingJson(json).write(result);
            json.write("matters", result.matters());
            json.write("standing", result.standing().rows());
        });
        return json.toString();
    }
}
