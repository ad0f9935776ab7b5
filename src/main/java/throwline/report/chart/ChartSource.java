package throwline.report.chart;

import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.study.Comparison.PackResult;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.units.Unit;
import throwline.words.Words;

/**
 * Source of all charts of one pack, and the lines that they share.
 *
 * @param model the aeroplane
 * @param result all set-ups with one pack
 * @param besideSpeed what stands beside a speed in m/s
 * @param words the sentences
 * @param layout for which place they are drawn
 */
record ChartSource(Model model, PackResult result, Unit besideSpeed, Words words, Layout layout) {

    Pack pack() {
        return result.pack();
    }

    List<SetUpResult> setUps() {
        return result.setUps();
    }

    String name(int index) {
        return setUps().get(index).setUp().name();
    }

    /** The caption of a chart whose title is a sentence of its own. */
    Caption caption(String titleKey, String holdsForKey, Object... arguments) {
        return captionBelow(words.say(titleKey), holdsForKey, arguments);
    }

    /** The title, what the chart holds for, the model and the pack, and what kind of numbers it shows. */
    Caption captionBelow(String title, String holdsForKey, Object... arguments) {
        boolean assumed = setUps().stream()
                .flatMap(setUp -> setUp.headlines().all().stream())
                .anyMatch(entry ->
                        entry.number() instanceof Headline.Known known && known.basis() == Headline.Basis.ASSUMED);
        return new Caption(
                title,
                List.of(words.say(holdsForKey, arguments), words.say("chart.of", model.name(), pack().name())),
                words.say(assumed ? "chart.proof.assumed" : "chart.proof"));
    }

    /** An axis of speeds, m/s. */
    Axis speeds(double low, double high) {
        return Axis.of(words.say("chart.axis.speed"), low, high, 8);
    }

    /** An axis in the unit that stands beside m/s, over the same speeds. */
    Axis besideSpeeds(double low, double high) {
        String label = words.say("chart.axis.speed.beside", besideSpeed.symbol());
        return Axis.of(label, besideSpeed.fromSi(low), besideSpeed.fromSi(high), 8);
    }

    /** A row for a set-up; says so where it has no number. */
    Row row(int index, List<Row.Value> numbers) {
        return new Row(name(index), ChartStyle.look(index), numbers, words.say("chart.none"));
    }

    /** The steady descent at the speed to come in at, where the sweep reaches it. */
    Optional<SetUpResult.SpeedPoint> comingIn(int index) {
        SetUpResult setUp = setUps().get(index);
        return setUp.approachSpeed().known().flatMap(speed -> at(setUp.sweep(), speed.value()));
    }

    private static Optional<SetUpResult.SpeedPoint> at(List<SetUpResult.SpeedPoint> sweep, double speed) {
        for (int i = 1; i < sweep.size(); i++) {
            SetUpResult.SpeedPoint a = sweep.get(i - 1);
            SetUpResult.SpeedPoint b = sweep.get(i);
            if (a.speed() <= speed && speed <= b.speed()) {
                double t = (speed - a.speed()) / (b.speed() - a.speed());
                return Optional.of(new SetUpResult.SpeedPoint(
                        speed,
                        a.descentAngle() + t * (b.descentAngle() - a.descentAngle()),
                        a.sinkRate() + t * (b.sinkRate() - a.sinkRate()),
                        a.lift() + t * (b.lift() - a.lift()),
                        a.drag() + t * (b.drag() - a.drag()),
                        a.elevator() + t * (b.elevator() - a.elevator())));
            }
        }
        return Optional.empty();
    }
}
