package throwline.report.answer;

import java.util.List;
import java.util.function.BiFunction;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.SetUpResult;
import throwline.units.Dimension;

/**
 * Set-ups of a model with one pack.
 *
 * @param who what tells it from the others; empty where there is one only
 * @param model the aeroplane
 * @param pack what it carries
 * @param setUps results, in the model's order
 * @param air what is said of the air
 */
record Flown(Text who, Model model, Pack pack, List<SetUpResult> setUps, Text air) {

    Flown {
        setUps = List.copyOf(setUps);
    }

    /** A list a group with something for each of its set-ups. */
    static <T> List<List<T>> each(List<Flown> all, BiFunction<Flown, SetUpResult, T> cell) {
        return all.stream()
                .map(flown ->
                        flown.setUps().stream().map(r -> cell.apply(flown, r)).toList())
                .toList();
    }

    /** The pack with its weight and balance. */
    Text packLine() {
        return packLine(pack);
    }

    static Text packLine(Pack pack) {
        return Text.say(
                "row.pack",
                pack.name(),
                Value.measure(pack.mass(), Dimension.MASS),
                Value.measure(pack.balance(), Dimension.LENGTH));
    }
}
