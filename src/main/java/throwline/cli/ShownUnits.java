package throwline.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Option;
import throwline.units.Dimension;
import throwline.units.Unit;

/** The option that asks for other units than the model file does; the same words as under "show" in the file. */
final class ShownUnits {

    private static final Map<String, List<Unit>> CHOICES = Map.of(
            "length", List.of(Unit.MILLIMETRE, Unit.CENTIMETRE, Unit.METRE, Unit.INCH, Unit.FOOT),
            "speed",
                    List.of(
                            Unit.METRE_PER_SECOND,
                            Unit.KILOMETRE_PER_HOUR,
                            Unit.MILE_PER_HOUR,
                            Unit.KNOT,
                            Unit.FOOT_PER_SECOND),
            "weight", List.of(Unit.KILOGRAM, Unit.GRAM, Unit.POUND, Unit.OUNCE),
            "torque", List.of(Unit.NEWTON_METRE, Unit.NEWTON_CENTIMETRE, Unit.KILOGRAM_CENTIMETRE, Unit.OUNCE_INCH));

    private static final Map<String, Dimension> KINDS = Map.of(
            "length", Dimension.LENGTH, "speed", Dimension.SPEED, "weight", Dimension.MASS, "torque", Dimension.TORQUE);

    @Option(names = "--show", split = ",", paramLabel = "WHAT=UNIT,...", hideParamSyntax = true, order = 50)
    private Map<String, String> shown = new LinkedHashMap<>();

    /**
     * The units asked for.
     *
     * @throws WrongInput where one is not understood
     */
    List<Unit> units(Context context) {
        return shown.entrySet().stream()
                .map(choice -> unit(context, choice.getKey().strip().toLowerCase(Locale.ROOT), choice.getValue()))
                .toList();
    }

    private static Unit unit(Context context, String what, String spelling) {
        Dimension kind = KINDS.get(what);
        List<Unit> choices = CHOICES.get(what);
        if (kind == null || choices == null) {
            throw new WrongInput(context.words().say("cli.show.what", what));
        }
        return Unit.spelt(spelling, kind)
                .filter(choices::contains)
                .orElseThrow(() -> new WrongInput(context.words()
                        .say(
                                "cli.show.unit",
                                what,
                                spelling,
                                String.join(
                                        ", ", choices.stream().map(Unit::symbol).toList()))));
    }
}
