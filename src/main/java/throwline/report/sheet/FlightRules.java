package throwline.report.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.model.Stick;
import throwline.report.document.Figures;
import throwline.report.document.Value;
import throwline.study.FirstFlightStudy;
import throwline.study.FirstFlights;
import throwline.study.Handling.Return;
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

    /** How long the surfaces of all set-ups should take. */
    String times(List<SetUpResult> setUps) {
        String times = of(setUps).map(e -> time(e.getKey(), e.getValue())).collect(Collectors.joining(", "));
        return times.isEmpty() ? words.say("sheet.order.time.unknown") : times;
    }

    private String time(String name, MoveRule rule) {
        if (rule.shortest().isEmpty()) {
            return words.say("sheet.order.time.none", name, figures.show(Value.time(rule.slowest())));
        }
        double time = rule.shortest().get();
        return time <= rule.quickest()
                ? words.say("sheet.order.time.any", name)
                : words.say("sheet.order.time", name, figures.show(Value.time(time)));
    }

    /** How fast and how high to be when the surfaces of a set-up go back. */
    String close(SetUpResult setUp) {
        return of(List.of(setUp))
                .findFirst()
                .map(e -> close(e.getValue()))
                .orElse(words.say("sheet.order.close.unknown"));
    }

    /** The same for several set-ups, each by its name. */
    String closeEach(List<SetUpResult> setUps) {
        return setUps.stream()
                .map(setUp -> words.say("sheet.order.close.one", setUp.setUp().name(), close(setUp)))
                .collect(Collectors.joining(", "));
    }

    private String close(MoveRule rule) {
        String speed = figures.show(Value.speed(rule.closeSpeed()));
        if (rule.heightLost().isPresent()) {
            return words.say("sheet.order.close", speed, height(rule));
        }
        return rule.comesBack() == Return.NEVER_LEFT
                ? words.say("sheet.order.close.any", speed)
                : words.say("sheet.order.close.unknown");
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
                            "sheet.order.close.one",
                            moved.getKey(),
                            figures.show(Value.deflection(FirstFlightStudy.FIRST_FLAP * moved.getValue()))))
                    .collect(Collectors.joining(", "));
            String from = below.map(speed -> words.say("sheet.order.loop.from", figures.show(Value.speed(speed))))
                    .orElse("");
            return words.say("sheet.order.loop", pull.name(), flaps, from);
        });
    }
}
