package throwline.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import throwline.model.Tail;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** The elevator mix to start with, and below it where the elevator sits when coming in, in millimetres. */
final class ElevatorChart {

    private static final double MILLIMETRES = 1000;
    private static final double MARGIN = 0.12;

    private final ChartQuestion question;
    private final EdgeThrow edge;

    ElevatorChart(ChartQuestion question) {
        this.question = question;
        Tail tail = question.model().tail();
        this.edge = new EdgeThrow(tail.throwChord());
    }

    Picture draw() {
        Words words = question.words();
        List<Rows.Row> mixes = mixes();
        List<Rows.Row> places = places();
        double most = 1;
        for (List<Rows.Row> rows : List.of(mixes, places)) {
            for (Rows.Row row : rows) {
                for (Rows.Mark mark : row.marks()) {
                    most = Math.max(most, Math.max(Math.abs(mark.low()), Math.abs(mark.high())));
                }
            }
        }
        double end = most * (1 + MARGIN);
        NumberAxis across = HouseStyle.axis(words.say("chart.axis.elevator"), -end, end, 10);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(across);
        plot.setGap(14);
        plot.setInsets(Rows.room(question.layout()));
        plot.add(Rows.plot(question.layout(), across, mixes, words.say("chart.elevator.mix")), 1 + mixes.size());
        plot.add(Rows.plot(question.layout(), across, places, words.say("chart.elevator.sits")), 1 + places.size());
        HouseStyle.dress(plot);
        String title = words.say("chart.elevator.title");
        return new Picture(
                "elevator",
                title,
                question.layout().width(),
                196 + Rows.HEIGHT * (mixes.size() + places.size() + 1),
                HouseStyle.chart(plot, title, question.holdsFor("chart.elevator.for"), question.proof()));
    }

    private List<Rows.Row> mixes() {
        List<Rows.Row> rows = new ArrayList<>();
        for (int i = 0; i < question.setUps().size(); i++) {
            SetUpResult setUp = question.setUps().get(i);
            boolean reference = setUp.setUp().equals(question.model().reference());
            List<Rows.Mark> marks = new ArrayList<>();
            Optional<Headline.Known> change = reference ? Optional.empty() : Headlines.known(setUp.elevatorChange());
            change.ifPresent(known -> {
                double start = Headlines.eitherWay(known) ? 0 : known.value() / 2;
                String label = Headlines.eitherWay(known)
                        ? question.words().say("chart.elevator.none")
                        : question.words().say("chart.elevator.start", direction(start));
                marks.add(new Rows.Mark(millimetres(start), millimetres(start), millimetres(start), true, label));
                marks.add(hollow(known, question.words().say("chart.elevator.expected", direction(known.value()))));
                marks.sort(Comparator.comparing(Rows.Mark::value));
            });
            String remark = question.words().say(reference ? "chart.elevator.reference" : "chart.none");
            rows.add(new Rows.Row(question.name(i), HouseStyle.look(i), marks, remark));
        }
        return rows;
    }

    private List<Rows.Row> places() {
        List<Rows.Row> rows = new ArrayList<>();
        for (int i = 0; i < question.setUps().size(); i++) {
            List<Rows.Mark> marks = new ArrayList<>();
            Headlines.known(question.setUps().get(i).elevator())
                    .ifPresent(known -> marks.add(hollow(known, direction(known.value()))));
            rows.add(new Rows.Row(
                    question.name(i),
                    HouseStyle.look(i),
                    marks,
                    question.words().say("chart.none")));
        }
        return rows;
    }

    private Rows.Mark hollow(Headline.Known known, String label) {
        return new Rows.Mark(
                millimetres(known.value()), millimetres(known.low()), millimetres(known.high()), false, label);
    }

    private double millimetres(double angle) {
        return MILLIMETRES * edge.distance(angle);
    }

    private String direction(double angle) {
        String size = String.format(Locale.ROOT, "%.1f", Math.abs(millimetres(angle)));
        if (size.equals("0.0")) {
            return question.words().say("chart.elevator.neutral");
        }
        return question.words().say(angle > 0 ? "chart.elevator.down" : "chart.elevator.up", size);
    }
}
