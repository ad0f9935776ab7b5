package throwline.report.sheet;

import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.report.data.SheetEntry;
import throwline.report.data.SheetNumbers;
import throwline.study.Comparison.PackResult;

/**
 * What sheets are made from.
 *
 * @param model the model
 * @param pack all set-ups with the pack that the sheets are for
 * @param others the same with the other packs of the model
 * @param earlier numbers of an earlier sheet, to mark what has changed; empty for none
 */
public record SheetAnswer(Model model, PackResult pack, List<PackResult> others, Optional<List<SheetEntry>> earlier) {

    public SheetAnswer {
        others = List.copyOf(others);
        earlier = earlier.map(List::copyOf);
    }

    /** The numbers of these sheets. */
    public List<SheetEntry> numbers() {
        return SheetNumbers.of(model, pack);
    }
}
