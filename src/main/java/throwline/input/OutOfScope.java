package throwline.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.units.Unit;
import throwline.words.Message;

/** Words of a model file that tell of an aeroplane of another kind than one wing with a tail behind it. */
final class OutOfScope {

    private static final String V_TAIL = "v-tail";
    private static final double HALF_TURN = Math.PI;

    private final Map<String, List<List<String>>> rowsByWord =
            Lines.of("out-of-scope.csv").stream().collect(Collectors.groupingBy(row -> NearestName.key(row.get(2))));

    /**
     * The sentence for a key.
     *
     * @param group path of the group it stands in; empty at the top
     * @param unknown true where no key of this name belongs there; else it is a name of the owner's choice
     * @param entry the key and its value
     * @param siblings all entries of that group
     */
    Optional<Message> key(String group, boolean unknown, Located.Entry entry, List<Located.Entry> siblings) {
        return kind(group, unknown, "key", entry.key().text())
                .map(kind -> kind.equals(V_TAIL) ? vTail(entry.value(), siblings) : Message.of("input.scope." + kind));
    }

    /**
     * The sentence for a value that is not allowed at its key.
     *
     * @param path of the key
     * @param text the value
     */
    Optional<Message> value(String path, String text) {
        return kind(path, false, "value", text).map(kind -> Message.of("input.scope." + kind));
    }

    /** The sentence for a tail that stands ahead of the wing, or none. */
    Optional<Message> arm(String path, String text) {
        boolean ahead = path.equals("tail.arm")
                && amount(text, Dimension.LENGTH).filter(arm -> arm < 0).isPresent();
        return ahead ? Optional.of(Message.of("input.scope.canard")) : Optional.empty();
    }

    private Optional<String> kind(String place, boolean anywhere, String as, String written) {
        return rowsByWord.getOrDefault(NearestName.key(written), List.of()).stream()
                .filter(row -> row.get(1).equals(as)
                        && (row.get(0).equals("*") ? anywhere : row.get(0).equals(place)))
                .map(row -> row.get(3))
                .findFirst();
    }

    /** The level tail instead, in figures where span, chord and angle can be read. */
    private static Message vTail(Located value, List<Located.Entry> siblings) {
        Optional<Double> angle =
                text(value).flatMap(said -> amount(said, Dimension.ANGLE)).filter(a -> a > 0 && a < HALF_TURN);
        Optional<Double> span = sibling(siblings, "span");
        Optional<Double> chord = sibling(siblings, "chord");
        if (angle.isEmpty() || span.isEmpty() || chord.isEmpty()) {
            return Message.of("input.scope.v-tail");
        }
        VTail level = VTail.level(span.get(), chord.get(), angle.get());
        return Message.of(
                "input.scope.v-tail.level",
                QuantityPrinter.print(level.raised(), Unit.DEGREE),
                QuantityPrinter.print(level.span(), Unit.MILLIMETRE),
                QuantityPrinter.print(level.chord(), Unit.MILLIMETRE));
    }

    private static Optional<Double> sibling(List<Located.Entry> siblings, String key) {
        return siblings.stream()
                .filter(entry -> NearestName.key(entry.key().text()).equals(key))
                .findFirst()
                .flatMap(entry -> text(entry.value()))
                .flatMap(said -> amount(said, Dimension.LENGTH));
    }

    private static Optional<String> text(Located value) {
        return value instanceof Located.Scalar scalar ? Optional.of(scalar.text()) : Optional.empty();
    }

    private static Optional<Double> amount(String text, Dimension dimension) {
        return QuantityReader.read(text, dimension) instanceof ReadQuantity.Amount amount
                ? Optional.of(amount.quantity().value())
                : Optional.empty();
    }
}
