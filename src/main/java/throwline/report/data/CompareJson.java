package throwline.report.data;

import java.util.List;
import throwline.model.Model;
import throwline.report.CompareAnswer;
import throwline.report.ElevatorMixes;
import throwline.report.Sentences;
import throwline.report.SwingUse;
import throwline.study.Comparison.PackResult;

/** Comparisons as JSON, format {@code compare/1}: SI units, angles in degrees. */
public final class CompareJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public CompareJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** One model: an object; several: an array of such objects. */
    public String write(List<CompareAnswer> answers) {
        RecordWriter json = new RecordWriter(sentences);
        if (answers.size() == 1) {
            answer(json, answers.get(0));
        } else {
            json.array(answers, answer -> answer(json, answer));
        }
        return json.toString();
    }

    private static void answer(RecordWriter json, CompareAnswer answer) {
        Model model = answer.comparison().model();
        json.object(() -> {
            json.write("format", "compare/1");
            json.write("model", model.name());
            LearnJson.flights(json, answer.learnt());
            json.objects("packs", answer.comparison().packs(), pack -> pack(json, model, pack));
            json.write("assumed", answer.assumed());
            json.write("warnings", answer.comparison().warnings());
        });
    }

    private static void pack(RecordWriter json, Model model, PackResult pack) {
        json.components(pack);
        json.write("mixes", ElevatorMixes.of(model, pack.setUps()));
        json.write("swings", SwingUse.of(model, pack.setUps()));
    }
}
