package throwline.window;

import java.util.Optional;
import throwline.report.document.Figures;
import throwline.report.document.Value;
import throwline.study.Headline;
import throwline.study.ThrottleAnswer;
import throwline.window.session.HandComputer;
import throwline.words.Words;

/** Sentences about steady flight at the throttle that is set. */
final class ThrottleLine {

    private static final double MINUTE = 60;

    private ThrottleLine() {}

    /** Empty while the throttle is closed; "working" until the answer is there. */
    static Optional<HandView.Said> of(Words words, Figures figures, HandComputer.Answer answer) {
        if (answer.question().throttle() <= 0) {
            return Optional.empty();
        }
        String text = answer.powered()
                .map(found -> text(words, figures, found, elevatorChord(answer)))
                .orElse(words.say(answer.isFinished() ? "window.throttle.none" : "window.working"));
        return Optional.of(new HandView.Said(false, "", text));
    }

    private static double elevatorChord(HandComputer.Answer answer) {
        return answer.question().model().tail().throwChord();
    }

    private static String text(Words words, Figures figures, ThrottleAnswer found, double chord) {
        boolean climbs = found.climbRate().value() >= 0;
        Headline.Known rate = climbs ? found.climbRate() : turned(found.climbRate());
        String trim = found.elevatorChange().mayGoEitherWay()
                ? words.say("window.throttle.trim.little")
                : words.say(
                        "window.throttle.trim",
                        figures.show(new Value.Edge(found.elevatorChange().value(), chord)));
        String path = found.climbRate().mayGoEitherWay()
                ? words.say(
                        "window.throttle.level",
                        figures.show(Value.speed(found.speed())),
                        figures.show(Value.speed(found.climbRate().high())),
                        figures.show(Value.speed(-found.climbRate().low())))
                : words.say(
                        climbs ? "window.throttle.climbs" : "window.throttle.sinks",
                        figures.show(Value.speed(found.speed())),
                        figures.show(Value.speed(rate.value())),
                        figures.show(new Value.Band(rate, Value.Kind.SPEED)));
        return path + " " + trim
                + " "
                + words.say(
                        "window.throttle.battery",
                        figures.show(new Value.Plain(found.current().value(), 0)),
                        figures.show(new Value.Plain(found.time().value() / MINUTE, 0)));
    }

    private static Headline.Known turned(Headline.Known number) {
        return new Headline.Known(-number.value(), -number.high(), -number.low(), number.basis(), number.shared());
    }
}
