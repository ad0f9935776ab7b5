package throwline.report.chart;

import java.awt.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import throwline.model.Wing;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.LoadStation;

/** Load of one set-up along the span against what each part can carry; places in metres and lift coefficients. */
final class LoadItems {

    private static final double MARK = 5;

    private final SetUpResult result;
    private final Wing wing;

    LoadItems(SetUpResult result, Wing wing) {
        this.result = result;
        this.wing = wing;
    }

    /** Both curves, with a band below what is carried; nothing where the load is not known. */
    List<Item> curves(ChartStyle.Look look) {
        List<LoadStation> load = result.load();
        if (load.isEmpty()) {
            return List.of();
        }
        List<Place> carried = places(load, LoadStation::lift);
        List<Place> band = new ArrayList<>(carried);
        band.add(Place.of(load.get(load.size() - 1).at(), 0));
        band.add(Place.of(load.get(0).at(), 0));
        Stroke dotted = ChartStyle.look(3).line();
        return List.of(
                Item.Area.of(band, look.band()),
                new Item.Line(places(load, LoadStation::limit), false, ChartStyle.QUIET_INK, dotted),
                new Item.Line(carried, false, look.color(), look.whisker()));
    }

    private static List<Place> places(List<LoadStation> load, ToDoubleFunction<LoadStation> value) {
        return load.stream()
                .map(station -> Place.of(station.at(), value.applyAsDouble(station)))
                .toList();
    }

    /** Distances from the middle where the wing lets go first, m, right positive; the left one first. */
    List<Double> firstStalls() {
        FirstStall stall = result.firstStall();
        if (stall.manner() == SetUpResult.Manner.NOT_REACHED || result.load().isEmpty()) {
            return List.of();
        }
        double distance = stall.spanFraction() * wing.semiSpan();
        return switch (stall.side()) {
            case LEFT -> List.of(-distance);
            case RIGHT -> List.of(distance);
            default -> List.of(-distance, distance);
        };
    }

    /** A line with a small triangle at its foot, which points up or down the page. */
    static List<Item> stallMark(Place top, Place foot, boolean pointsDown) {
        double tip = pointsDown ? 2 * MARK : -2 * MARK;
        return List.of(
                Item.Line.of(ChartStyle.INK, ChartStyle.THIN, top, foot),
                Item.Area.of(List.of(foot.moved(0, tip), foot.moved(MARK, 0), foot.moved(-MARK, 0)), ChartStyle.INK));
    }
}
