package throwline.input;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.units.Dimension;
import throwline.units.Unit;

/** The unit in which a model file gives the torque of its servos. */
final class TorqueUnit {

    private static final Pattern WRITTEN = Pattern.compile("[\"']?[0-9.]+\\s*([^,}\\]#\"']{1,20}).*");

    private TorqueUnit() {}

    /**
     * The unit of the first servo that has one.
     *
     * @param root the file
     * @param text its text, for what was written at the places that the tree knows
     */
    static Optional<Unit> of(Branch root, String text) {
        List<String> lines = List.of(SyntaxFault.lines(text));
        return root.child("servos").children().stream()
                .map(servo -> servo.child("torque"))
                .filter(torque -> !torque.isAbsent())
                .flatMap(torque -> written(torque.place(), lines).stream())
                .findFirst();
    }

    private static Optional<Unit> written(FilePlace place, List<String> lines) {
        String rest = lines.get(place.line() - 1).substring(place.column() - 1);
        Matcher quantity = WRITTEN.matcher(rest);
        return quantity.matches() ? Unit.spelt(quantity.group(1).strip(), Dimension.TORQUE) : Optional.empty();
    }
}
