package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;

/** Set-ups and sticks as a model file writes them, on one line. */
final class EntryText {

    private EntryText() {}

    static String of(SetUp setUp) {
        List<String> parts = new ArrayList<>();
        setUp.deflections().forEach((surface, angle) -> {
            if (angle != 0) {
                parts.add(name(surface) + ": " + QuantityPrinter.deflection(angle));
            }
        });
        if (setUp.elevator() != 0) {
            parts.add("elevator: " + QuantityPrinter.deflection(setUp.elevator()));
        }
        return name(setUp.name()) + ": {" + String.join(", ", parts) + "}";
    }

    static String of(Stick stick) {
        return stick instanceof Stick.Roll roll ? roll(roll) : pull((Stick.Pull) stick);
    }

    private static String roll(Stick.Roll stick) {
        List<String> parts = new ArrayList<>(List.of("does: roll"));
        for (Map.Entry<String, Stick.Throws> moved : stick.throwsBySurface().entrySet()) {
            parts.add(name(moved.getKey()) + ": {up: " + size(moved.getValue().up()) + ", down: "
                    + size(moved.getValue().down()) + "}");
        }
        return name(stick.name()) + ": {" + String.join(", ", parts) + in(stick) + "}";
    }

    private static String pull(Stick.Pull stick) {
        List<String> parts = new ArrayList<>(List.of("does: pull"));
        if (stick.elevator() != 0) {
            parts.add("elevator: " + QuantityPrinter.deflection(stick.elevator()));
        }
        stick.deflections()
                .forEach((surface, angle) -> parts.add(name(surface) + ": " + QuantityPrinter.deflection(angle)));
        return name(stick.name()) + ": {" + String.join(", ", parts) + in(stick) + "}";
    }

    private static String in(Stick stick) {
        return stick.in().isEmpty()
                ? ""
                : ", in: ["
                        + String.join(
                                ", ", stick.in().stream().map(EntryText::name).toList()) + "]";
    }

    private static String size(double angle) {
        return QuantityPrinter.print(angle, Unit.DEGREE);
    }

    /** Plain where that cannot be read as anything else, else in quotes. */
    private static String name(String name) {
        boolean plain = name.matches("[A-Za-z][A-Za-z0-9 _-]*[A-Za-z0-9]|[A-Za-z]")
                && !name.matches("(?i)true|false|null|yes|no|on|off|none");
        return plain ? name : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
