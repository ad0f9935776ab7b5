package throwline.report.data;

import throwline.report.Sentences;
import throwline.study.WingSweep;

/** The bare wing over incidence as JSON, format {@code wing/1}: SI units, angles in degrees, coefficients. */
public final class WingJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public WingJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** The document; without the marks of the stall where they were not found. */
    public String write(WingSweep sweep) {
        JsonWriter json = new JsonWriter();
        RecordWriter records = new RecordWriter(json, sentences);
        json.object();
        json.key("format").value("wing/1");
        records.components(sweep);
        sweep.stall().ifPresent(stall -> records.write("stall", stall));
        json.end();
        return json.toString();
    }
}
