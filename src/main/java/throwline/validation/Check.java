package throwline.validation;

import java.util.Optional;

/**
 * Value from outside the project and what the product says instead. Units are those of the case.
 *
 * @param quantity what was asked
 * @param condition what holds for it
 * @param measured the value from outside
 * @param predicted the product's; NaN where it found none
 * @param low the prediction must not be smaller
 * @param high the prediction must not be larger
 * @param mark how sure the value from outside is: READ, COMPUTED, MEMORY or PRACTICE
 * @param why reason of the limits, and what is known about a failure
 * @param place where the value stands in a series of such values; empty where it stands alone
 */
public record Check(
        String quantity,
        String condition,
        double measured,
        double predicted,
        double low,
        double high,
        String mark,
        String why,
        Optional<Place> place) {

    /**
     * A place in a series.
     *
     * @param series what the series' other values have in common
     * @param across what it runs over, with its unit
     * @param at where this value stands
     */
    public record Place(String series, String across, double at) {}

    /** True where the prediction lies inside its limits. */
    public boolean passed() {
        return predicted >= low && predicted <= high;
    }

    static Check of(CaseRow row, double predicted) throws UnreadableCase {
        return of(row, predicted, Optional.empty());
    }

    static Check of(CaseRow row, double predicted, Optional<Place> place) throws UnreadableCase {
        double measured = row.number("value");
        Allowed allowed = Allowed.of(row, measured);
        return new Check(
                row.text("quantity"),
                row.condition(),
                measured,
                predicted,
                allowed.low(),
                allowed.high(),
                row.text("mark"),
                row.text("why"),
                place);
    }
}
