package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import throwline.section.computed.SectionFigure;
import throwline.section.computed.ThreeWays;

/**
 * Errors of three ways to tell a figure of an airfoil that nobody measured, at one Reynolds number: nine of ten are smaller;
 * shares, or rad for angles.
 *
 * @param figure what was told
 * @param reynolds Reynolds number
 * @param values how many
 * @param standIn of the airfoil most alike, turned
 * @param method of the rule alone
 * @param difference of the rule and what it misses on the airfoils most alike
 */
public record WaysRow(Figure figure, double reynolds, int values, double standIn, double method, double difference) {

    /** All figures at all Reynolds numbers. */
    static List<WaysRow> of(List<ThreeWays> ways) {
        List<WaysRow> rows = new ArrayList<>();
        for (Figure figure : List.of(
                Figure.SECTION_MAX_LIFT, Figure.SECTION_STALL_ANGLE, Figure.SECTION_ZERO_LIFT, Figure.SECTION_DRAG)) {
            ways.stream().mapToDouble(ThreeWays::reynolds).distinct().sorted().forEach(reynolds -> {
                List<ThreeWays> some = ways.stream()
                        .filter(way -> way.reynolds() == reynolds && of(way.figure()) == figure)
                        .toList();
                rows.add(new WaysRow(
                        figure,
                        reynolds,
                        some.size(),
                        nineOfTen(some, ThreeWays::standIn),
                        nineOfTen(some, ThreeWays::method),
                        nineOfTen(some, ThreeWays::difference)));
            });
        }
        return rows;
    }

    private static Figure of(SectionFigure figure) {
        return switch (figure) {
            case ZERO_LIFT -> Figure.SECTION_ZERO_LIFT;
            case MAX_LIFT -> Figure.SECTION_MAX_LIFT;
            case STALL_ANGLE -> Figure.SECTION_STALL_ANGLE;
            case DRAG_LOW, DRAG_MIDDLE, DRAG_HIGH -> Figure.SECTION_DRAG;
        };
    }

    private static double nineOfTen(List<ThreeWays> ways, ToDoubleFunction<ThreeWays> said) {
        double[] errors = ways.stream()
                .mapToDouble(way -> Math.abs(said.applyAsDouble(way) - way.measured()) / scale(way))
                .toArray();
        return new Percentile(90).withEstimationType(EstimationType.R_7).evaluate(errors);
    }

    private static double scale(ThreeWays way) {
        return Stream.of(SectionFigure.ZERO_LIFT, SectionFigure.STALL_ANGLE).anyMatch(way.figure()::equals)
                ? 1
                : way.measured();
    }
}
