package throwline.report.answer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Cells;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.Danger;
import throwline.study.FlightQuantity;
import throwline.study.FlightQuantity.Screen;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** Differences between set-ups of one name with another pack, in another model, or with other throws. */
final class DifferenceSection {

    private final Flown base;
    private final Flown other;
    /** True where changes that are too close to call are shown too. */
    private final boolean everyChange;
    /** Results of the other whose set-ups both have. */
    private final List<SetUpResult> shared;
    /** Results of the base by the names of their set-ups. */
    private final Map<String, SetUpResult> before;

    private DifferenceSection(Flown base, Flown other, boolean everyChange) {
        this.everyChange = everyChange;
        this.base = base;
        this.other = other;
        before = base.setUps().stream()
                .collect(Collectors.toMap(result -> result.setUp().name(), result -> result));
        shared = other.setUps().stream()
                .filter(result -> before.containsKey(result.setUp().name()))
                .toList();
    }

    /** New dangers before the rows; of another model every change. */
    static List<Block> withDangers(Flown base, Flown other) {
        DifferenceSection section =
                new DifferenceSection(base, other, !base.model().equals(other.model()));
        List<Block> blocks = new ArrayList<>(section.dangers());
        blocks.addAll(section.blocks());
        return section.shared.isEmpty() ? List.of() : blocks;
    }

    /** Rows in which a set-up reads differently, and whether others are left; empty without a common name. */
    static List<Block> everyChange(Flown base, Flown other) {
        DifferenceSection section = new DifferenceSection(base, other, true);
        return section.shared.isEmpty() ? List.of() : section.blocks();
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Table.Row> rows = new ArrayList<>();
        boolean close = false;
        for (NumberRow row : NumberRow.of(List.of(base, other))) {
            if (row.quantity().isOn(Screen.GLANCE) && row.holdsFor(base) && row.holdsFor(other)) {
                if (shared.stream().anyMatch(result -> isShown(row, result))) {
                    rows.add(row(row.name(), result -> number(row, result)));
                } else {
                    close = true;
                }
            }
        }
        words(rows, Text.say("row.first"), FirstStallRow::told);
        LandingFit fit = new LandingFit(other.model().field());
        if (base.model().field().equals(other.model().field())) {
            fit.heading("row.change.field").ifPresent(label -> words(rows, label, fit::cell));
        }
        if (!rows.isEmpty()) {
            blocks.add(
                    Tables.labelled(shared, result -> Text.name(result.setUp().name()), rows));
        }
        if (close) {
            blocks.add(Paragraph.of(Role.QUIET, Text.say(rest(rows.isEmpty()))));
        }
        return blocks;
    }

    /** Dangers that hold here and not in the base. */
    private List<Paragraph> dangers() {
        Map<Danger, List<String>> here = new EnumMap<>(Danger.class);
        shared.forEach(result -> {
            List<Danger> known = Danger.of(before(result), base.model().field());
            Danger.of(result, other.model().field()).stream()
                    .filter(danger -> !known.contains(danger))
                    .forEach(danger -> here.computeIfAbsent(danger, d -> new ArrayList<>())
                            .add(result.setUp().name()));
        });
        return here.entrySet().stream()
                .map(danger -> DangerSentences.danger(
                        List.of(danger.getKey()),
                        danger.getValue(),
                        Math.max(2, other.setUps().size())))
                .toList();
    }

    private Cells row(Text label, Function<SetUpResult, Text> cell) {
        return Tables.row(label, shared, cell);
    }

    /** A row of words where one of them differs. */
    private void words(List<Table.Row> rows, Text label, Function<SetUpResult, Text> said) {
        boolean differs = shared.stream().anyMatch(result -> !said.apply(result).equals(said.apply(before(result))));
        if (differs) {
            rows.add(row(label, said));
        }
    }

    private Optional<Headline.Known> known(NumberRow row, SetUpResult result) {
        return own(row.known(other, result));
    }

    private Optional<Headline.Known> before(NumberRow row, SetUpResult result) {
        return own(row.known(base, before(result)));
    }

    private SetUpResult before(SetUpResult result) {
        return before.getOrDefault(result.setUp().name(), result);
    }

    /** Packs of one model and set-ups of one wing share errors, models do not. */
    private Optional<Headline.Known> own(Optional<Headline.Known> number) {
        return base.model().wing().equals(other.model().wing())
                ? number
                : number.map(known -> new Headline.Known(known.value(), known.low(), known.high(), known.basis()));
    }

    private boolean isShown(NumberRow row, SetUpResult result) {
        return isClear(row, result)
                || (everyChange && !row.shown(other, result).equals(row.shown(base, before(result))));
    }

    private String rest(boolean none) {
        if (everyChange) {
            return none ? "row.change.nothing" : "row.change.as-before";
        }
        return none ? "row.change.none" : "row.change.rest";
    }

    private boolean isClear(NumberRow row, SetUpResult result) {
        Optional<Headline.Known> known = known(row, result);
        Optional<Headline.Known> before = before(row, result);
        if (known.isPresent() && before.isPresent()) {
            return !known.get().tooCloseTo(before.get());
        }
        return !row.shown(other, result).equals(row.shown(base, before(result)));
    }

    /** A number, and by how much it differs or that it is too close to call. */
    private Text number(NumberRow row, SetUpResult result) {
        Text shown = row.shown(other, result);
        Optional<Headline.Known> known = known(row, result);
        Optional<Headline.Known> before = before(row, result);
        if (known.isEmpty() || before.isEmpty()) {
            return shown;
        }
        boolean clear = isClear(row, result);
        if (!clear && (!everyChange || shown.equals(row.shown(base, before(result))))) {
            return everyChange ? shown : Text.say("row.close.mark", shown);
        }
        if (row.quantity() == FlightQuantity.ELEVATOR_CHANGE) {
            return Text.say("row.change.was", shown, row.shown(base, before(result)));
        }
        Value.Kind kind = Value.Kind.of(row.quantity());
        Text change = Text.say(
                "row.change",
                Value.of(known.get().value(), kind),
                new Value.Change(known.get().value() - before.get().value(), kind));
        return clear ? change : Text.say("row.close.mark", change);
    }
}
