package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.study.OneSided;
import throwline.study.OneSided.Held;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** What a card says of surfaces that move on one side only: where full roll does not hold them, and how slow it does. */
final class OneSideWarning {

    private final List<SetUpResult> setUps;
    private final Words words;

    OneSideWarning(List<SetUpResult> setUps, Words words) {
        this.setUps =
                setUps.stream().filter(result -> !result.oneSided().isEmpty()).toList();
        this.words = words;
    }

    /** The sentence; empty where no set-up moves anything that a stick rolls against. */
    Optional<String> sentence(DoubleFunction<String> speed) {
        if (setUps.isEmpty()) {
            return Optional.empty();
        }
        List<String> said = new ArrayList<>();
        named(Held.NOT).ifPresent(names -> said.add(words.say("sheet.field.one-side.not", names)));
        named(Held.MAY_BE).ifPresent(names -> said.add(words.say("sheet.field.one-side.may-be", names)));
        sides(Held.HELD)
                .flatMap(result -> result.oneSided().stream())
                .flatMap(side -> side.slowest().stream())
                .max(Double::compare)
                .ifPresent(slowest -> said.add(words.say("sheet.field.one-side.held", speed.apply(slowest))));
        return Optional.of(words.say("sheet.field.one-side", String.join("; ", said)));
    }

    private Optional<String> named(Held held) {
        String names = sides(held).map(result -> result.setUp().name()).collect(Collectors.joining(", "));
        return Optional.of(names).filter(n -> !n.isEmpty());
    }

    /** Set-ups of which this is the worst. */
    private Stream<SetUpResult> sides(Held held) {
        return setUps.stream()
                .filter(result -> result.oneSided().stream().map(OneSided::held).max(Held::compareTo).stream()
                        .anyMatch(held::equals));
    }
}
