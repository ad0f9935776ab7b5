package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jfree.chart.ui.RectangleInsets;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.LoadStation;
import throwline.words.Words;

/** Load along the span against what each part can carry, one small panel a set-up, all to one scale. */
final class LoadChart {

    private static final int PANEL = 118;
    private static final double HEADROOM = 1.12;

    /** Room for the name and the scale on the left, for the labels of both curves on the right; points. */
    private static final double LEFT = 140;

    private static final double RIGHT = 84;

    /** Room that the scale takes left of a panel, points. */
    private static final double SCALE = 58;

    private final ChartSource source;
    private final Wing wing;

    LoadChart(ChartSource source) {
        this.source = source;
        this.wing = source.model().wing();
    }

    Picture draw() {
        List<LoadStation> all =
                source.setUps().stream().flatMap(setUp -> setUp.load().stream()).toList();
        double most = all.stream()
                .mapToDouble(station -> Math.max(station.lift(), station.limit()))
                .reduce(0.1, Math::max);
        double least = all.stream().mapToDouble(LoadStation::lift).reduce(0, Math::min);
        Words words = source.words();
        Axis up = Axis.of(words.say("chart.axis.sectionlift"), least * HEADROOM, most * HEADROOM, 4);
        List<Panel> panels = IntStream.range(0, source.setUps().size())
                .mapToObj(i -> Panel.drawing(PANEL, up, false, items(i, up)))
                .toList();
        return new Picture(
                "load",
                source.caption("chart.load.title", "chart.load.for"),
                source.layout().width(),
                198 + (PANEL + 14) * panels.size(),
                Axis.of(words.say("chart.axis.span"), -wing.semiSpan(), wing.semiSpan(), 10),
                Optional.empty(),
                new RectangleInsets(22, LEFT, 4, RIGHT),
                panels);
    }

    private List<Item> items(int index, Axis up) {
        SetUpResult result = source.setUps().get(index);
        List<Item> items = new ArrayList<>();
        for (Surface surface : wing.surfaces()) {
            for (double end : new double[] {-surface.to(), -surface.from(), surface.from(), surface.to()}) {
                items.add(Item.Line.upright(end, ChartStyle.GRID, ChartStyle.THIN));
            }
            double middle = (surface.from() + surface.to()) / 2;
            for (double at : index == 0 ? new double[] {-middle, middle} : new double[0]) {
                Place above = Place.of(at, Place.EDGE).moved(0, -9);
                items.add(Item.Text.quiet(above, surface.name(), Brush.Side.MIDDLE));
            }
        }
        Place name = Place.of(-Place.EDGE, (up.low() + up.high()) / 2).moved(-SCALE, 0);
        items.add(new Item.Name(name, source.name(index), LEFT - 8, 3, Brush.Side.LEFT));
        items.add(Item.Line.level(0, ChartStyle.QUIET_INK, ChartStyle.THIN));
        LoadItems load = new LoadItems(result, wing);
        items.addAll(load.curves(ChartStyle.look(index)));
        if (!result.load().isEmpty()) {
            LoadStation last = result.load().get(result.load().size() - 1);
            Words words = source.words();
            items.add(new EndLabels(List.of(
                    EndLabels.End.ofLevel(words.say("chart.load.limit"), Place.of(last.at(), last.limit())),
                    EndLabels.End.ofLevel(words.say("chart.load.carried"), Place.of(last.at(), last.lift())))));
        }
        List<Double> stalls = load.firstStalls();
        for (double at : stalls) {
            items.addAll(LoadItems.stallMark(Place.of(at, Place.EDGE), Place.of(at, -Place.EDGE), false));
        }
        stalls.stream()
                .limit(1)
                .forEach(at -> items.add(Item.Text.small(
                        Place.of(at, -Place.EDGE).moved(10, -12),
                        source.words().say("chart.load.first"),
                        Brush.Side.RIGHT)));
        return items;
    }
}
