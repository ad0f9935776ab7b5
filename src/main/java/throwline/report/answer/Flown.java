package throwline.report.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.Headline;
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

    /** The set-up that the others are compared with; empty where it is not among them. */
    Optional<SetUpResult> reference() {
        return setUps.stream()
                .filter(result -> model.isReference(result.setUp()))
                .findFirst();
    }

    /** A place of the elevator, rad, as it is measured at its trailing edge. */
    Text edge(double angle) {
        return new Value.Edge(angle, model.tail().throwChord());
    }

    /** The band of such a place. */
    Text edgeBand(Headline.Known angle) {
        return new Value.EdgeBand(angle, model.tail().throwChord());
    }

    /** The pack with its weight and balance. */
    Text packLine() {
        return packLine(pack);
    }

    /** The same in short. */
    Text briefPackLine() {
        return packLine("row.pack.brief", pack);
    }

    static Text packLine(Pack pack) {
        return packLine("row.pack", pack);
    }

    private static Text packLine(String key, Pack pack) {
        return Text.say(
                key,
                pack.name(),
                Value.measure(pack.mass(), Dimension.MASS),
                Value.measure(pack.balance(), Dimension.LENGTH));
    }
}
