package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.OneSided;
import throwline.study.OneSided.Held;
import throwline.study.SetUpResult;

/** Sentence of a card on surfaces that move on one side only: where full roll does not hold them, and how slow it does. */
final class OneSideWarning {

    private final List<SetUpResult> setUps;

    OneSideWarning(List<SetUpResult> setUps) {
        this.setUps =
                setUps.stream().filter(result -> !result.oneSided().isEmpty()).toList();
    }

    /** The sentence; empty where no set-up moves anything that a stick rolls against. */
    Optional<Text> sentence() {
        if (setUps.isEmpty()) {
            return Optional.empty();
        }
        List<Text> said = new ArrayList<>();
        named(Held.NOT).ifPresent(names -> said.add(Text.say("sheet.field.one-side.not", names)));
        named(Held.MAY_BE).ifPresent(names -> said.add(Text.say("sheet.field.one-side.may-be", names)));
        sides(Held.HELD)
                .flatMap(result -> result.oneSided().stream())
                .flatMap(side -> side.slowest().stream())
                .max(Double::compare)
                .ifPresent(slowest -> said.add(Text.say("sheet.field.one-side.held", Value.speed(slowest))));
        return Optional.of(Text.say("sheet.field.one-side", Text.join(Text.Join.SEMICOLON, said)));
    }

    private Optional<Text> named(Held held) {
        List<String> names = sides(held).map(result -> result.setUp().name()).toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(Text.join(Text.Join.COMMA, names, Text::name));
    }

    /** Set-ups of which this is the worst. */
    private Stream<SetUpResult> sides(Held held) {
        return setUps.stream()
                .filter(result -> result.oneSided().stream().map(OneSided::held).max(Held::compareTo).stream()
                        .anyMatch(held::equals));
    }
}
