package throwline.validation;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** Weight of a row of a case in the statistics: its column {@code counts as} names the figure. */
final class Counted {

    private Counted() {}

    /** The pair of a row; empty where it does not count. */
    static Optional<Pair> of(String group, CaseRow row, Check check) throws UnreadableCase {
        if (!row.has("counts as")) {
            return Optional.empty();
        }
        Figure figure = Figure.of(row.text("counts as")).orElseThrow(() -> row.wrong("counts as", "case.counts-as"));
        DoubleUnaryOperator as = as(figure, check.quantity());
        return Optional.of(new Pair(
                figure,
                "MODEL",
                group,
                check.quantity() + ", " + check.condition(),
                as.applyAsDouble(check.measured()),
                as.applyAsDouble(check.predicted())));
    }

    /** A speed goes with the root of lift, a descent angle with the glide ratio. */
    private static DoubleUnaryOperator as(Figure figure, String quantity) {
        boolean speed = figure == Figure.STALL_SPEED || figure == Figure.STALL_SPEED_RATIO;
        if (speed && quantity.contains("lift")) {
            return lift -> 1 / Math.sqrt(lift);
        }
        if ((figure == Figure.DESCENT_CLEAN || figure == Figure.DESCENT_MOVED) && quantity.contains("glide")) {
            return ratio -> Math.toDegrees(Math.atan(1 / ratio));
        }
        return value -> value;
    }
}
