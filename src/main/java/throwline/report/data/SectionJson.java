package throwline.report.data;

import throwline.report.Sentences;
import throwline.study.SectionSweep;

/** One section over angle of attack as JSON, format {@code section/1}: angles in degrees, coefficients. */
public final class SectionJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public SectionJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** The document. */
    public String write(SectionSweep sweep) {
        JsonWriter json = new JsonWriter();
        json.object();
        json.key("format").value("section/1");
        new RecordWriter(json, sentences).components(sweep);
        json.end();
        return json.toString();
    }
}
