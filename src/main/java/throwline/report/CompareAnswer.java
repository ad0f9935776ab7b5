package throwline.report;

import java.util.List;
import throwline.model.Assumption;
import throwline.study.Comparison;

/**
 * What a comparison found, with what was assumed for it.
 *
 * @param comparison the result
 * @param assumed values that the model file did not give
 */
public record CompareAnswer(Comparison comparison, List<Assumption> assumed) {

    public CompareAnswer {
        assumed = List.copyOf(assumed);
    }
}
