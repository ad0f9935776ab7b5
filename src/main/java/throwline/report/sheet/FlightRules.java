package throwline.report.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.flight.SurfaceMove.Return;
import throwline.model.Stick;
import throwline.report.document.Figures;
import throwline.report.document.Value;
import throwline.study.FirstFlightStudy;
import throwline.study.FirstFlights;
import throwline.study.MoveRule;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** The model's own rules for the first flights, in words: flap time, going back, flaps with the elevator. */
final class FlightRules {

    private final FirstFlights rules;
    private final Figures figures;
    private final Words words;

    FlightRules(FirstFlights rules, Figures figures, Words words) {
        this.rules = rules;
        this.figures = figures;
        this.words = words;
    }

    private Stream<Map.Entry<String, MoveRule>> of(List<SetUpResult> setUps) {
        return setUps.stream()
                .map(result -> result.setUp().name())
                .flatMap(name ->
                        Optional.ofNullable(rules.moves().get(name)).map(rule -> Map.entry(name, rule)).stream());
    }

    /** How long the surfaces of all set-ups should take at least. */
    String times(List<SetUpResult> setUps) {
        List<Map.Entry<String, MoveRule>> all = of(setUps).toList();
        Stream<String> slow = all.stream()
                .filter(each -> !isQuick(each.getValue()))
                .map(each -> time(each.getKey(), each.getValue()));
        Stream<String> others = all.stream()
                .filter(each -> isQuick(each.getValue()))
                .limit(1)
                .map(each -> words.say(
                        "sheet.order.time.else",
                        figures.show(Value.time(each.getValue().quickest()))));
        return all.isEmpty() ? SheetFigures.NONE : Stream.concat(slow, others).collect(Collectors.joining(", "));
    }

    /** True where the quickest time that was tried is long enough. */
    private static boolean isQuick(MoveRule rule) {
        return rule.shortest().filter(time -> time <= rule.quickest()).isPresent();
    }

    private String time(String name, MoveRule rule) {
        return rule.shortest()
                .map(time -> words.say("sheet.order.time", name, figures.show(Value.time(time))))
                .orElseGet(() -> words.say("sheet.order.time.none", name, figures.show(Value.time(rule.slowest()))));
    }

    /** How fast to be when the surfaces go back, the fastest of these set-ups for all, and how high for each. */
    String close(List<SetUpResult> setUps) {
        String each = setUps.stream()
                .map(setUp -> setUp.setUp().name())
                .map(name -> of(name).map(rule -> close(name, rule))
                        .orElseGet(() -> words.say("sheet.order.close.unknown", name)))
                .collect(Collectors.joining(", "));
        return of(setUps)
                .map(rule -> rule.getValue().closeSpeed())
                .max(Comparator.naturalOrder())
                .map(speed -> words.say("sheet.order.close", figures.show(Value.speed(speed)), each))
                .orElse(each);
    }

    private Optional<MoveRule> of(String name) {
        return Optional.ofNullable(rules.moves().get(name));
    }

    private String close(String name, MoveRule rule) {
        if (rule.heightLost().isPresent()) {
            return words.say("sheet.order.close.one", name, height(rule));
        }
        return words.say(
                rule.comesBack() == Return.NEVER_LEFT ? "sheet.order.close.any" : "sheet.order.close.unknown", name);
    }

    /** Where a set-up must not go back all the way. */
    String never(SetUpResult setUp) {
        return of(List.of(setUp))
                .map(Map.Entry::getValue)
                .filter(rule -> rule.heightLost().isPresent())
                .findFirst()
                .map(rule -> words.say("sheet.order.close.below", height(rule)))
                .orElse(words.say("sheet.order.close.ground"));
    }

    private String height(MoveRule rule) {
        return figures.show(Value.distance(Math.ceil(rule.heightLost().orElseThrow())));
    }

    /** How to begin with a pull stick that moves flaps; empty for others. */
    Optional<String> loop(Stick.Pull pull) {
        return Optional.ofNullable(rules.stallsBelow().get(pull.name())).map(below -> {
            String flaps = pull.deflections().entrySet().stream()
                    .filter(moved -> moved.getValue() != 0)
                    .map(moved -> words.say(
                            "sheet.order.loop.flap",
                            moved.getKey(),
                            figures.show(Value.deflection(FirstFlightStudy.FIRST_FLAP * moved.getValue()))))
                    .collect(Collectors.joining(", "));
            String from = below.map(speed -> words.say("sheet.order.loop.from", figures.show(Value.speed(speed))))
                    .orElse("");
            return words.say("sheet.order.loop", pull.name(), flaps, from);
        });
    }
}
