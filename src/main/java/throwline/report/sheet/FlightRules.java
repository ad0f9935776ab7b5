package throwline.report.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.flight.SurfaceMove.Return;
import throwline.model.Stick;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.FirstFlightStudy;
import throwline.study.FirstFlights;
import throwline.study.MoveRule;
import throwline.study.SetUpResult;

/** The model's own rules for the first flights, in words: flap time, going back, flaps with the elevator. */
final class FlightRules {

    private final FirstFlights rules;

    FlightRules(FirstFlights rules) {
        this.rules = rules;
    }

    private Stream<Map.Entry<String, MoveRule>> of(List<SetUpResult> setUps) {
        return setUps.stream()
                .map(result -> result.setUp().name())
                .flatMap(name ->
                        Optional.ofNullable(rules.moves().get(name)).map(rule -> Map.entry(name, rule)).stream());
    }

    /** How long the surfaces of all set-ups should take at least. */
    Text times(List<SetUpResult> setUps) {
        List<Map.Entry<String, MoveRule>> all = of(setUps).toList();
        Stream<Text> slow = all.stream()
                .filter(each -> !isQuick(each.getValue()))
                .map(each -> time(each.getKey(), each.getValue()));
        Stream<Text> others = all.stream()
                .filter(each -> isQuick(each.getValue()))
                .limit(1)
                .map(each -> Text.say(
                        "sheet.order.time.else", Value.time(each.getValue().quickest())));
        return all.isEmpty()
                ? Text.name("-")
                : Text.join(Join.COMMA, Stream.concat(slow, others).toList());
    }

    /** True where the quickest time that was tried is long enough. */
    private static boolean isQuick(MoveRule rule) {
        return rule.shortest().filter(time -> time <= rule.quickest()).isPresent();
    }

    private Text time(String name, MoveRule rule) {
        return rule.shortest()
                .map(time -> Text.say("sheet.order.time", name, Value.time(time)))
                .orElseGet(() -> Text.say("sheet.order.time.none", name, Value.time(rule.slowest())));
    }

    /** How fast to be when the surfaces go back, the fastest of these set-ups for all, and how high for each. */
    Text close(List<SetUpResult> setUps) {
        List<Text> said = setUps.stream()
                .map(setUp -> setUp.setUp().name())
                .map(name -> of(name).map(rule -> close(name, rule))
                        .orElseGet(() -> Text.say("sheet.order.close.unknown", name)))
                .toList();
        Text each = Text.join(Join.COMMA, said);
        return of(setUps)
                .map(rule -> rule.getValue().closeSpeed())
                .max(Comparator.naturalOrder())
                .map(speed -> Text.say("sheet.order.close", Value.speed(speed), each))
                .orElse(each);
    }

    private Optional<MoveRule> of(String name) {
        return Optional.ofNullable(rules.moves().get(name));
    }

    private Text close(String name, MoveRule rule) {
        if (rule.heightLost().isPresent()) {
            return Text.say("sheet.order.close.one", name, height(rule));
        }
        return Text.say(
                rule.comesBack() == Return.NEVER_LEFT ? "sheet.order.close.any" : "sheet.order.close.unknown", name);
    }

    /** Where a set-up must not go back all the way. */
    Text never(SetUpResult setUp) {
        return of(List.of(setUp))
                .map(Map.Entry::getValue)
                .filter(rule -> rule.heightLost().isPresent())
                .findFirst()
                .map(rule -> Text.say("sheet.order.close.below", height(rule)))
                .orElse(Text.say("sheet.order.close.ground"));
    }

    private Value height(MoveRule rule) {
        return Value.distance(Math.ceil(rule.heightLost().orElseThrow()));
    }

    /** How to begin with a pull stick that moves flaps; empty for others. */
    Optional<Text> loop(Stick.Pull pull) {
        return Optional.ofNullable(rules.stallsBelow().get(pull.name())).map(below -> {
            List<Text> flaps = pull.deflections().entrySet().stream()
                    .filter(moved -> moved.getValue() != 0)
                    .map(moved -> Text.say(
                            "sheet.order.loop.flap",
                            moved.getKey(),
                            Value.deflection(FirstFlightStudy.FIRST_FLAP * moved.getValue())))
                    .toList();
            Text from = below.map(speed -> Text.say("sheet.order.loop.from", Value.speed(speed)))
                    .orElse(Text.none());
            return Text.say("sheet.order.loop", pull.name(), Text.join(Join.COMMA, flaps), from);
        });
    }
}
