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
        RecordWriter json = new RecordWriter(sentences);
        json.object(() -> {
            json.write("format", "wing/1");
            json.components(sweep);
            sweep.stall().ifPresent(stall -> json.write("stall", stall));
        });
        return json.toString();
    }
}
