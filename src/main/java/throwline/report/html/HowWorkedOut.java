package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.report.Headlines;
import throwline.report.data.DataUnit;
import throwline.report.data.SixFigures;
import throwline.report.document.Figures;
import throwline.report.html.Card.Fact;
import throwline.study.Bands;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Words;

/** What opens below a number: how it was worked out, from what, after whom, and what its band rests on. */
final class HowWorkedOut {

    private final Words words;
    private final Bands bands = Bands.load();

    HowWorkedOut(Words words) {
        this.words = words;
    }

    List<Fact> facts(String row, Headline.Known known, Flown flown, SetUpResult result) {
        List<Fact> facts = new ArrayList<>();
        Optional<FlightQuantity> found = FlightQuantity.ofRow(row);
        found.ifPresent(how -> facts.add(fact("page.fact.formula", formula(how, flown, result))));
        facts.add(fact("page.fact.inputs", inputs(flown, result.setUp())));
        found.ifPresent(how -> facts.add(fact("page.fact.source", words.say(how.source()))));
        String basis = words.say("page.basis." + known.basis().name().toLowerCase(Locale.ROOT));
        String rests = found.map(how -> bands.source(how.band(result.setUp().isClean())))
                .map(source -> words.say("page.basis.rests", basis, source))
                .orElse(basis);
        facts.add(fact("page.fact.basis", rests));
        found.ifPresent(how -> facts.add(fact("page.fact.exact", exact(how, known))));
        return facts;
    }

    private Fact fact(String label, String text) {
        return new Fact(words.say(label), text);
    }

    private String exact(FlightQuantity how, Headline.Known known) {
        DataUnit unit = DataUnit.of(how.dimension());
        return words.say(
                "page.exact",
                SixFigures.of(unit.factor() * known.value()),
                SixFigures.of(unit.factor() * known.low()),
                SixFigures.of(unit.factor() * known.high()),
                unit.symbol(),
                how.key());
    }

    private String formula(FlightQuantity how, Flown flown, SetUpResult result) {
        Figures figures = new Figures(flown.page(), words);
        String none = words.say("page.no-answer");
        return words.say(
                how.how(),
                say(result.stallSpeed(), v -> figures.speed(v.value()), none),
                say(result.approachSpeed(), v -> figures.speed(v.value()), none),
                say(result.descentAngle(), v -> figures.degrees(v.value()), none),
                say(result.elevatorChange(), v -> figures.deflection(v.value()), none),
                flown.model().reference().name());
    }

    private static String say(Headline headline, Function<Headline.Known, String> text, String none) {
        return Headlines.known(headline).map(text).orElse(none);
    }

    private String inputs(Flown flown, SetUp setUp) {
        Model model = flown.model();
        QuantityPrinter printer = new QuantityPrinter(flown.page().units());
        Figures figures = new Figures(flown.page(), words);
        String stand = model.wing().surfaces().stream()
                .map(surface -> words.say(
                        "page.input.surface",
                        surface.name(),
                        figures.deflection(surface.reached(setUp.deflection(surface.name())))))
                .collect(Collectors.joining(", "));
        String airfoils = model.wing().sections().stream()
                .map(section -> section.airfoil().text())
                .distinct()
                .collect(Collectors.joining(", "));
        return words.say(
                "page.inputs",
                printer.print(flown.result().pack().mass(), Dimension.MASS),
                printer.print(flown.result().pack().balance(), Dimension.LENGTH),
                printer.print(model.wing().area(), Dimension.AREA),
                airfoils,
                stand.isEmpty() ? words.say("page.input.no-surfaces") : stand,
                flown.air());
    }
}
