package throwline.report;

import java.util.List;
import java.util.Optional;
import throwline.model.Assumption;
import throwline.study.Comparison;
import throwline.study.Learnt;
import throwline.words.Message;

/**
 * Results of a comparison, with what was assumed for it.
 *
 * @param comparison the result
 * @param assumed values that the model file did not give
 * @param notes what else the owner of the model file should know
 * @param learnt what flights told; empty where they put nothing right
 */
public record CompareAnswer(
        Comparison comparison, List<Assumption> assumed, List<Message> notes, Optional<Learnt> learnt) {

    /** A comparison without flights. */
    public CompareAnswer(Comparison comparison, List<Assumption> assumed, List<Message> notes) {
        this(comparison, assumed, notes, Optional.empty());
    }

    public CompareAnswer {
        assumed = List.copyOf(assumed);
        notes = List.copyOf(notes);
    }
}
