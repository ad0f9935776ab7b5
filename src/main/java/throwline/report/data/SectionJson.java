package throwline.report.data;

import java.util.List;
import throwline.report.Sentences;
import throwline.study.SectionFlow;
import throwline.study.SectionSweep;

/** Section over angle of attack as JSON, format {@code section/1}: angles in degrees, coefficients. */
public final class SectionJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public SectionJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /**
     * The document.
     *
     * @param sweep the section over angle
     * @param flows air along its outline; none where not known
     */
    public String write(SectionSweep sweep, List<SectionFlow> flows) {
        RecordWriter json = new RecordWriter(sentences);
        json.object(() -> {
            json.write("format", "section/1");
            json.components(sweep);
            json.write("computedFlows", flows);
        });
        return json.toString();
    }
}
