package throwline.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import throwline.Parsed;
import throwline.model.Tail;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Sentences;
import throwline.report.data.CompareJson;
import throwline.study.FlightQuantity;
import throwline.units.Display;
import throwline.words.Words;

/** Every number on the page is the one in JSON, and can be opened to where it comes from. */
class PageNumbersTest {

    private static final Pattern NUMBER = Pattern.compile("\\d+(?<decimals>\\.\\d+)?");

    private final Words words = Words.load();
    private final CompareAnswer answer = Fixture.orchard();
    private final PageDom page = PageDom.of("", answer);
    private final Parsed json =
            Parsed.of(new CompareJson(new Sentences(words, Display.metric())).write(List.of(answer)));

    /** Cards, the key of its numbers in JSON, and the stick where it is a roll. */
    private record Row(List<Element> cards, FlightQuantity how, String stick) {}

    private Row row(FlightQuantity how, String label, String stick) {
        return new Row(page.cards(label), how, stick);
    }

    private List<Row> rows(FlightQuantity how) {
        if (how != FlightQuantity.ROLL_RATE) {
            return List.of(row(how, words.say(how.row()), ""));
        }
        return List.of(row(how, "Roll rate: low rates", "low rates"), row(how, "Roll rate: high rates", "high rates"));
    }

    /** What JSON says of a row, pack by pack and set-up by set-up; the reference has no mix. */
    private List<Parsed> inJson(Row row) {
        List<Parsed> numbers = new ArrayList<>();
        for (int p = 0; p < json.at("packs").size(); p++) {
            Parsed setUps = json.at("packs").at(p).at("setups");
            for (int i = 0; i < setUps.size(); i++) {
                if (row.how() == FlightQuantity.ELEVATOR_CHANGE && i == 0) {
                    continue;
                }
                Parsed number = setUps.at(i).at(row.how().key());
                numbers.add(row.stick().isEmpty() ? number : number.at(row.stick()));
            }
        }
        return numbers.stream()
                .filter(number -> ((java.util.Map<?, ?>) number.value()).get("value") != null)
                .toList();
    }

    @ParameterizedTest
    @EnumSource(
            value = FlightQuantity.class,
            names = {
                "APPROACH_GLIDE_RATIO",
                "BEST_GLIDE_RATIO",
                "NOSE_DOWN_SPEED",
                "LANDING_DISTANCE_IN_WIND",
                "TAKE_OFF_DISTANCE",
                "CLIMB_ANGLE",
                "CLIMB_SPEED",
                "GO_AROUND_LOSS",
                "CLIMB_HEIGHT",
                "THROTTLE_.*",
                "LEVEL_THROTTLE",
                "TOP_SPEED",
                "LOOP_TOP_SPEED",
                "CRUISE_.*",
                "SLOWEST_.*"
            },
            mode = EnumSource.Mode.MATCH_NONE)
    void every_number_of_a_row_is_the_one_in_json(FlightQuantity how) {
        for (Row row : rows(how)) {
            List<Element> shown = row.cards().stream()
                    .flatMap(card -> PageDom.all(card, "data").stream())
                    .toList();
            List<Parsed> expected = inJson(row);
            assertThat(shown).hasSameSizeAs(expected).isNotEmpty();
            for (int i = 0; i < shown.size(); i++) {
                Element number = shown.get(i);
                assertThat(Double.parseDouble(number.getAttribute("value")))
                        .isEqualTo(expected.get(i).at("value").number());
                assertThat(Double.parseDouble(number.getAttribute("data-low")))
                        .isEqualTo(expected.get(i).at("low").number());
                assertThat(Double.parseDouble(number.getAttribute("data-high")))
                        .isEqualTo(expected.get(i).at("high").number());
                if (how != FlightQuantity.GO_AROUND) {
                    assertReads(number, expected.get(i).at("value").number());
                }
            }
        }
    }

    /** What a person reads is that number in the unit shown, rounded to the digits shown. */
    private void assertReads(Element shown, double inJson) {
        String text = PageDom.said(shown);
        if (text.equals("none")) {
            assertThat(Double.parseDouble(shown.getAttribute("data-low"))).isLessThanOrEqualTo(0);
            assertThat(Double.parseDouble(shown.getAttribute("data-high"))).isGreaterThanOrEqualTo(0);
            return;
        }
        Matcher number = NUMBER.matcher(text);
        assertThat(number.find()).as(text).isTrue();
        int decimals =
                number.group("decimals") == null ? 0 : number.group("decimals").length() - 1;
        assertThat(Double.parseDouble(number.group()))
                .as(text)
                .isCloseTo(asShown(text, shown, inJson), within(0.5 * Math.pow(10, -decimals) + 1e-3));
    }

    /** The throw at the trailing edge is a chord of the circle about the hinge; the mix is half of the change. */
    private double asShown(String text, Element shown, double inJson) {
        if (!text.contains("mm")) {
            return Math.abs(inJson);
        }
        Tail tail = answer.comparison().model().tail();
        boolean mix = PageDom.said((Element)
                        shown.getParentNode().getParentNode().getParentNode().getParentNode())
                .startsWith("Elevator mix");
        double angle = Math.toRadians(Math.abs(inJson)) / (mix ? 2 : 1);
        return 1000 * 2 * tail.chord() * tail.elevator().chordFraction() * Math.sin(angle / 2);
    }

    @Test
    void every_number_in_the_verdict_stands_in_a_card_too() {
        Set<String> inCards = new TreeSet<>();
        for (Element card : PageDom.ofClass(page.root(), "card")) {
            numbers(PageDom.said(card)).forEach(inCards::add);
        }
        List<String> inVerdict = new ArrayList<>();
        for (Element verdict : PageDom.ofClass(page.root(), "verdict")) {
            inVerdict.addAll(numbers(PageDom.said(verdict)));
        }
        assertThat(inVerdict).hasSizeGreaterThan(5);
        assertThat(inCards).containsAll(inVerdict);
    }

    private static List<String> numbers(String text) {
        return NUMBER.matcher(text).results().map(result -> result.group()).toList();
    }

    @Test
    void every_headline_number_opens_to_formula_inputs_source_band_and_basis() {
        for (Element number : page.all("data")) {
            Element line = (Element) number.getParentNode().getParentNode();
            assertThat(line.getTagName()).isEqualTo("details");
            assertThat(PageDom.all(line, "dt").stream().map(PageDom::said))
                    .endsWith("How", "From", "Source", "Band", "In full");
            assertThat(PageDom.all(line, "dd").stream().map(PageDom::said)).noneMatch(String::isEmpty);
        }
    }
}
