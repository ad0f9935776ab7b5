package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.report.data.DataUnit;
import throwline.report.data.SixFigures;
import throwline.report.document.Comparison.Fact;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.Bands;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.units.Dimension;

/** Facts that open below a number: how it was worked out, from what, after whom, and what its band rests on. */
final class NumberFacts {

    private final Bands bands = Bands.load();

    List<Fact> of(FlightQuantity quantity, Headline.Known known, Flown flown, SetUpResult result) {
        Text basis = Text.say("page.basis." + known.basis().name().toLowerCase(Locale.ROOT));
        String source = bands.source(quantity.band(result.setUp().isClean()));
        List<Fact> facts = new ArrayList<>();
        known.learnt().ifPresent(before -> facts.add(fromFlights(quantity, before)));
        facts.addAll(List.of(
                new Fact(Text.say("page.fact.formula"), formula(quantity, flown, result)),
                new Fact(Text.say("page.fact.inputs"), inputs(flown, result.setUp())),
                new Fact(Text.say("page.fact.source"), Text.say(quantity.source())),
                new Fact(Text.say("page.fact.basis"), Text.say("page.basis.rests", basis, source)),
                new Fact(Text.say("page.fact.exact"), exact(quantity, known))));
        return facts;
    }

    private static Fact fromFlights(FlightQuantity quantity, Headline.FromFlights before) {
        DataUnit unit = DataUnit.of(quantity.dimension());
        return new Fact(
                Text.say("page.fact.flights"),
                Text.say(
                        before.flown() ? "page.flights.flown" : "page.flights.others",
                        SixFigures.of(unit.factor() * before.value()),
                        SixFigures.of(unit.factor() * before.low()),
                        SixFigures.of(unit.factor() * before.high()),
                        unit.symbol()));
    }

    private static Text exact(FlightQuantity quantity, Headline.Known known) {
        DataUnit unit = DataUnit.of(quantity.dimension());
        return Text.say(
                "page.exact",
                SixFigures.of(unit.factor() * known.value()),
                SixFigures.of(unit.factor() * known.low()),
                SixFigures.of(unit.factor() * known.high()),
                unit.symbol(),
                quantity.key());
    }

    private static Text formula(FlightQuantity quantity, Flown flown, SetUpResult result) {
        return Text.say(
                quantity.how(),
                value(result.stallSpeed(), Value.Kind.SPEED),
                value(result.approachSpeed(), Value.Kind.SPEED),
                value(result.descentAngle(), Value.Kind.ANGLE),
                value(result.number(FlightQuantity.ELEVATOR_CHANGE), Value.Kind.DEFLECTION),
                flown.model().reference().name());
    }

    private static Text value(Headline headline, Value.Kind kind) {
        return headline.known()
                .<Text>map(known -> Value.of(known.value(), kind))
                .orElse(Text.say("page.no-answer"));
    }

    private static Text inputs(Flown flown, SetUp setUp) {
        Model model = flown.model();
        List<Text> stand = model.wing().surfaces().stream()
                .map(surface -> Text.say(
                        "page.input.surface",
                        surface.name(),
                        Value.deflection(surface.reached(setUp.deflection(surface.name())))))
                .toList();
        List<String> airfoils = model.wing().sections().stream()
                .map(section -> section.airfoil().text())
                .distinct()
                .toList();
        return Text.say(
                "page.inputs",
                Value.measure(flown.pack().mass(), Dimension.MASS),
                Value.measure(flown.pack().balance(), Dimension.LENGTH),
                Value.measure(model.wing().area(), Dimension.AREA),
                Text.join(Join.COMMA, airfoils, Text::name),
                stand.isEmpty() ? Text.say("page.input.no-surfaces") : Text.join(Join.COMMA, stand),
                flown.air());
    }
}
