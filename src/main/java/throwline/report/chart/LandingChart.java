package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import throwline.model.Field;
import throwline.report.Headlines;
import throwline.study.FieldAnswer.Legs;
import throwline.study.Headline;
import throwline.words.Words;

/** Landings seen from the side, heights enlarged, with the field; below it how far each leg takes and where it stops. */
final class LandingChart {

    private static final int VIEW = 210;

    /** The axis ends beyond the farthest end of a band by this factor. */
    private static final double BEYOND = 1.06;

    /** Room above the highest path, as a factor. */
    private static final double ABOVE = 1.25;

    private final Layout layout;
    private final Field field;
    private final Words words;
    private final List<Entry> entries;

    /**
     * @param layout for which place
     * @param field where it lands
     * @param entries one a row
     * @param words the sentences
     */
    LandingChart(Layout layout, Field field, List<Entry> entries, Words words) {
        this.layout = layout;
        this.field = field;
        this.entries = List.copyOf(entries);
        this.words = words;
    }

    /**
     * One landing.
     *
     * @param name what stands on the left
     * @param legs leg by leg; empty where there is none
     * @param total from the obstacle to the stop
     */
    record Entry(String name, Optional<Legs> legs, Headline total) {}

    /**
     * Draws it.
     *
     * @param holdsFor the lines below the title
     * @param proof the line at the foot
     */
    Picture draw(List<String> holdsFor, String proof) {
        double farthest = BEYOND * farthest();
        double behind = -0.04 * farthest;
        NumberAxis across = HouseStyle.axis(
                words.say(field.obstacle() > 0 ? "chart.axis.behind.obstacle" : "chart.axis.behind.start"),
                behind,
                farthest,
                layout == Layout.NARROW ? 5 : 10);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(across);
        plot.setGap(6);
        plot.setInsets(Rows.room(layout));
        plot.add(ways(), VIEW);
        plot.add(rows(across, farthest), Rows.HEIGHT * entries.size() + LegBars.KEY);
        HouseStyle.dress(plot);
        String title = words.say("chart.landing.title");
        return new Picture(
                "landing",
                title,
                layout.width(),
                210 + VIEW + LegBars.KEY + Rows.HEIGHT * entries.size(),
                HouseStyle.chart(plot, title, holdsFor, proof));
    }

    private XYPlot ways() {
        double highest = field.obstacle();
        List<LandingWays.Way> ways = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).legs().isPresent()) {
                Legs legs = entries.get(i).legs().get();
                highest = Math.max(highest, legs.way().get(0).height());
                ways.add(new LandingWays.Way(
                        HouseStyle.look(i),
                        legs.way().stream()
                                .map(spot -> new double[] {spot.along(), spot.height()})
                                .toList(),
                        Math.max(0, legs.approach()),
                        legs.touchdown()));
            }
        }
        NumberAxis up = HouseStyle.axis(words.say("chart.axis.wheels"), 0, Math.max(1, ABOVE * highest), 5);
        return LandingWays.plot(up, ways, field, words);
    }

    private XYPlot rows(NumberAxis across, double farthest) {
        List<Rows.Row> rows = new ArrayList<>();
        List<LegBars.Bar> bars = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            List<Rows.Mark> marks = new ArrayList<>();
            Headlines.known(entry.total()).ifPresent(total -> marks.add(mark(total, farthest)));
            rows.add(new Rows.Row(entry.name(), HouseStyle.look(i), marks, words.say("chart.none")));
            int row = i;
            entry.legs()
                    .ifPresent(legs -> bars.add(new LegBars.Bar(
                            row,
                            HouseStyle.look(row),
                            Math.max(0, legs.approach()),
                            legs.approach() + legs.roundOut(),
                            legs.touchdown(),
                            legs.touchdown() + legs.roll())));
        }
        XYPlot plot = Rows.plot(layout, across, rows, " ");
        plot.addAnnotation(new LegBars(bars, rows.size(), words), false);
        return plot;
    }

    private Rows.Mark mark(Headline.Known total, double farthest) {
        String label = words.say("chart.landing.mark", whole(total.value()), whole(total.low()), whole(total.high()));
        return new Rows.Mark(total.value(), total.low(), Math.min(farthest, total.high()), true, label);
    }

    private double farthest() {
        double farthest = field.length().orElse(1);
        for (Entry entry : entries) {
            farthest = Math.max(
                    farthest,
                    Headlines.known(entry.total()).map(Headline.Known::high).orElse(0.0));
        }
        return farthest;
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
