package throwline.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.report.document.Figures;
import throwline.report.document.Value;
import throwline.study.Headline;
import throwline.study.Learnt;
import throwline.study.SetUpResult;
import throwline.window.session.HandComputer;
import throwline.words.Words;

/**
 * An answer after the flights, where both its set-ups stand as they were flown; else the answer as it is.
 *
 * @param answer what is shown
 * @param before of the set-up at hand without the flights; empty where they are not used
 */
record FlownAnswer(HandComputer.Answer answer, Optional<SetUpResult> before) {

    static FlownAnswer of(HandComputer.Answer found, Function<Model, Optional<Learnt>> flights) {
        Optional<Learnt> learnt = flights.apply(found.question().model());
        Optional<SetUpResult> now = learnt.flatMap(told -> after(told, found, found.now()));
        Optional<SetUpResult> against =
                learnt.flatMap(told -> found.against().flatMap(other -> after(told, found, other)));
        if (now.isEmpty() || against.isPresent() != found.against().isPresent()) {
            return new FlownAnswer(found, Optional.empty());
        }
        HandComputer.Answer after =
                new HandComputer.Answer(found.question(), found.density(), now.get(), against, found.powered(), false);
        return new FlownAnswer(after, Optional.of(found.now()));
    }

    private static Optional<SetUpResult> after(Learnt told, HandComputer.Answer found, SetUpResult result) {
        SetUp flown = result.setUp();
        boolean asInTheFile = told.before().model().setUps().contains(flown);
        return asInTheFile ? told.after(found.question().pack().name(), flown.name()) : Optional.empty();
    }

    /** What the flights changed; nothing where they are not used. */
    List<HandView.Said> said(Words words, Figures figures) {
        return before
                .map(result -> new HandView.Said(
                        false,
                        words.say("window.flights.hand"),
                        words.say(
                                "window.flights.hand.text",
                                shown(result.stallSpeed(), Value.Kind.SPEED, figures),
                                shown(result.descentAngle(), Value.Kind.ANGLE, figures))))
                .stream()
                .toList();
    }

    private static String shown(Headline number, Value.Kind kind, Figures figures) {
        return number instanceof Headline.Known known ? figures.show(Value.of(known.value(), kind)) : "-";
    }
}
