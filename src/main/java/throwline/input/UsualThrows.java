package throwline.input;

import java.util.List;
import java.util.Optional;

/** Throws that are usual in the trade (common practice, no source), by kind of model and path in the model file. */
final class UsualThrows {

    /** Where there are usual throws, both ways of a surface together where it goes both ways. */
    static final List<String> PATHS = List.of(
            "wing.surfaces.flaps.travel",
            "wing.surfaces.ailerons.travel",
            "tail.elevator.travel",
            "set-ups.take-off flap.flaps",
            "set-ups.landing flap.flaps",
            "set-ups.airbrake.flaps",
            "set-ups.airbrake.ailerons",
            "sticks.rates.ailerons",
            "sticks.full up.elevator");

    private final List<List<String>> rows = Lines.of("typical.csv");
    private final String kind;

    /**
     * The throws for a kind of model.
     *
     * @param glider true for a model with neither wheels nor a propeller that does not fold
     */
    UsualThrows(boolean glider) {
        kind = glider ? "glider" : "powered";
    }

    /** The throw at this path, as a model file has it. */
    Optional<String> at(String path) {
        List<String> ways = rows.stream()
                .filter(row -> row.get(0).equals(kind) && row.get(1).startsWith(path + "."))
                .map(row -> row.get(1).substring(path.length() + 1) + ": " + row.get(2))
                .toList();
        return ways.isEmpty() ? single(path) : Optional.of("{" + String.join(", ", ways) + "}");
    }

    private Optional<String> single(String path) {
        return rows.stream()
                .filter(row -> row.get(0).equals(kind) && row.get(1).equals(path))
                .map(row -> row.get(2))
                .findFirst();
    }
}
