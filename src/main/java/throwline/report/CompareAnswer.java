package throwline.report;

import java.util.List;
import throwline.model.Assumption;
import throwline.study.Comparison;
import throwline.words.Message;

/**
 * What a comparison found, with what was assumed for it.
 *
 * @param comparison the result
 * @param assumed values that the model file did not give
 * @param notes what else the owner of the model file should know
 */
public record CompareAnswer(Comparison comparison, List<Assumption> assumed, List<Message> notes) {

    public CompareAnswer {
        assumed = List.copyOf(assumed);
        notes = List.copyOf(notes);
    }
}
