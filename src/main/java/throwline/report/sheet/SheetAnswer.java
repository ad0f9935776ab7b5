package throwline.report.sheet;

import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.report.data.SheetEntry;
import throwline.report.data.SheetNumbers;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.Comparison.PackResult;
import throwline.study.FirstFlights;
import throwline.study.Learnt;

/**
 * Results that sheets are made from.
 *
 * @param model the model
 * @param pack all set-ups with the pack that the sheets are for
 * @param others the same with the other packs of the model
 * @param earlier numbers of an earlier sheet, to mark what has changed; empty for none
 * @param rules the model's own rules for its first flights
 * @param learnt what flights told; empty where they put nothing right
 */
public record SheetAnswer(
        Model model,
        PackResult pack,
        List<PackResult> others,
        Optional<List<SheetEntry>> earlier,
        FirstFlights rules,
        Optional<Learnt> learnt) {

    public SheetAnswer {
        others = List.copyOf(others);
        earlier = earlier.map(List::copyOf);
    }

    /** Sheets of a model without flights and without rules. */
    public SheetAnswer(Model model, PackResult pack, List<PackResult> others, Optional<List<SheetEntry>> earlier) {
        this(model, pack, others, earlier, FirstFlights.none(), Optional.empty());
    }

    /** A line below the title, with what the numbers rest on where flights put them right. */
    Text below(Text line) {
        return learnt.map(l -> Text.say(
                        "learn.sheet",
                        line,
                        Value.count(l.flights()),
                        l.lastDate().isEmpty() ? Text.say("learn.no-date") : l.lastDate()))
                .orElse(line);
    }

    /** The numbers of these sheets. */
    public List<SheetEntry> numbers() {
        return SheetNumbers.of(model, pack);
    }
}
