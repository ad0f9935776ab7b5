package throwline.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import throwline.model.SetUp;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;

/** What a page must be whatever it shows: whole in itself, readable by all, small. */
class ComparePageTest {

    private static final String FILE = "name: <Orchard> & \"sons\" </pre><script>alert(1)</script>\n";

    /** A page that is larger cannot be sent to a club mate's telephone; bytes. */
    private static final int LARGEST = 1_500_000;

    private static final Pattern COLOR = Pattern.compile("--(?<name>[a-z]+): #(?<rgb>[0-9a-f]{6})");

    private static final List<PageDom> PAGES = List.of(
            PageDom.of(FILE, Fixture.orchard()),
            PageDom.of(FILE, Fixture.crowded()),
            PageDom.of(FILE, Fixture.nothingFound()),
            PageDom.of(FILE, Fixture.orchard(), Fixture.crowded()));

    static List<PageDom> pages() {
        return PAGES;
    }

    @ParameterizedTest
    @MethodSource("pages")
    void nothing_is_asked_for_from_outside(PageDom page) {
        assertThat(page.all("script")).isEmpty();
        assertThat(Stream.of("link", "iframe", "img", "image", "object", "embed", "base", "video")
                        .flatMap(tag -> page.all(tag).stream()))
                .isEmpty();
        for (Element element : page.all("*")) {
            for (String name : List.of("href", "xlink:href", "src", "srcset", "action", "style", "background")) {
                assertThat(element.getAttribute(name)).as(name).doesNotContain("//");
            }
            for (String name : List.of("href", "xlink:href")) {
                if (element.hasAttribute(name)) {
                    assertThat(element.getAttribute(name)).matches("(?s)(#|data:).*");
                }
            }
        }
        Matcher urls = Pattern.compile("url\\((?!['\"]?#)").matcher(page.text());
        assertThat(urls.find()).isFalse();
        assertThat(page.text()).doesNotContain("@import");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_picture_says_what_it_shows_and_every_name_is_its_own(PageDom page) {
        List<String> ids = page.all("*").stream()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids).doesNotHaveDuplicates();
        for (Element figure : page.all("figure")) {
            Element svg = PageDom.all(figure, "svg").get(0);
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(ids).contains(svg.getAttribute("aria-labelledby").split(" "));
            assertThat(PageDom.said(PageDom.all(svg, "title").get(0))).isNotEmpty();
            assertThat(PageDom.said(PageDom.all(svg, "desc").get(0))).isNotEmpty();
        }
        for (Element svg : page.all("svg")) {
            assertThat(svg.getAttribute("role").equals("img")
                            || svg.getAttribute("aria-hidden").equals("true")
                            || hidden(svg))
                    .isTrue();
        }
        Matcher references = Pattern.compile("url\\(['\"]?#(?<id>[^)'\"]+)").matcher(page.text());
        while (references.find()) {
            assertThat(ids).contains(references.group("id"));
        }
    }

    private static boolean hidden(Element svg) {
        return svg.getParentNode() instanceof Element parent
                && parent.getAttribute("aria-hidden").equals("true");
    }

    @Test
    void each_chart_names_its_set_ups() {
        CompareAnswer answer = Fixture.crowded();
        PageDom page = PageDom.of(FILE, answer);
        List<String> names =
                answer.comparison().model().setUps().stream().map(SetUp::name).toList();
        List<Element> pictures = page.all("figure");
        assertThat(pictures).hasSizeGreaterThan(15);
        for (Element figure : pictures) {
            // A name is broken into lines where it is long.
            String said = PageDom.said(figure).replace(" ", "");
            boolean own = names.contains(PageDom.said(PageDom.all(figure, "h3").get(0)));
            List<String> broken = names.stream()
                    .map(name -> name.replace(" ", ""))
                    .filter(name -> !said.contains(name) && !writtenInLines(figure, name))
                    .toList();
            assertThat(own || broken.isEmpty()).as(said + broken).isTrue();
        }
    }

    /** True where the words of a name follow each other as lines of text. */
    private static boolean writtenInLines(Element figure, String name) {
        String lines = String.join(
                "", PageDom.all(figure, "text").stream().map(PageDom::said).toList());
        return lines.replace(" ", "").contains(name);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void a_page_is_small_and_ends_its_verdict_with_the_caution(PageDom page) {
        assertThat(page.text().getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(LARGEST);
        assertThat(page.text()).doesNotContain("NaN").doesNotContain("Infinity");
        for (Element verdict : PageDom.ofClass(page.root(), "verdict")) {
            List<Element> sentences = PageDom.all(verdict, "li");
            assertThat(PageDom.said(sentences.get(sentences.size() - 1)))
                    .isEqualTo("An estimate, not proof. Try it high up, with an experienced pilot beside you.");
        }
        assertThat(PageDom.said(PageDom.ofClass(page.root(), "caution").get(0)))
                .contains("Propeller off")
                .contains("club")
                .contains("experienced pilot")
                .contains("carries people");
    }

    @Test
    void the_model_file_is_inside_to_be_read_and_to_be_saved() {
        PageDom page = pages().get(0);
        assertThat(page.all("pre").get(0).getTextContent()).isEqualTo(FILE);
        Element link = PageDom.ofClass(page.root(), "save").get(0);
        assertThat(link.getAttribute("download")).isEqualTo("my \"model\".yaml");
        String data = link.getAttribute("href").replaceFirst("^data:[^,]*;base64,", "");
        assertThat(new String(Base64.getDecoder().decode(data), StandardCharsets.UTF_8))
                .isEqualTo(FILE);
    }

    /** Contrast as W3C defines it (Web Content Accessibility Guidelines 2.1, success criterion 1.4.3): 4.5 for text. */
    @Test
    void text_stands_out_from_its_ground() {
        Map<String, String> named = new HashMap<>();
        COLOR.matcher(pages().get(0).text()).results().forEach(m -> named.put(m.group(1), m.group(2)));
        UnaryOperator<String> colors = name -> Objects.requireNonNull(named.get(name), name);
        for (String ground : List.of("ground", "shade")) {
            for (String text : List.of("ink", "quiet", "link")) {
                assertThat(contrast(colors.apply(text), colors.apply(ground)))
                        .as(text + " on " + ground)
                        .isGreaterThanOrEqualTo(4.5);
            }
        }
        assertThat(contrast("ffffff", colors.apply("link"))).isGreaterThanOrEqualTo(4.5);
        Pattern fill = Pattern.compile("(?:^|[; ])fill:(?<color>[^;]+)");
        List<String> inCharts = new ArrayList<>();
        for (Element text : pages().get(1).all("text")) {
            for (Element at = text; at != null; at = (Element) at.getParentNode()) {
                Matcher found = fill.matcher(at.getAttribute("style"));
                if (found.find()) {
                    inCharts.add(found.group("color"));
                    break;
                }
            }
        }
        assertThat(inCharts).isNotEmpty();
        inCharts.stream()
                .distinct()
                .forEach(color ->
                        assertThat(contrast(hex(color), "ffffff")).as(color).isGreaterThanOrEqualTo(4.5));
    }

    private static String hex(String fill) {
        Matcher rgb = Pattern.compile("rgb\\((\\d+),(\\d+),(\\d+)\\)").matcher(fill);
        return rgb.matches()
                ? String.format(
                        "%02x%02x%02x",
                        Integer.parseInt(rgb.group(1)), Integer.parseInt(rgb.group(2)), Integer.parseInt(rgb.group(3)))
                : fill.equals("black") ? "000000" : fill.replace("#", "");
    }

    private static double contrast(String a, String b) {
        double one = luminance(a);
        double other = luminance(b);
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(String rgb) {
        double[] weight = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double value = Integer.parseInt(rgb.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weight[i] * (value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @Test
    void two_models_stand_side_by_side_and_what_is_too_close_is_grey_and_said() {
        PageDom page = PageDom.of(FILE, Fixture.orchard(), Fixture.crowded());
        Element card = page.card("Stall speed");
        assertThat(PageDom.ofClass(card, "who").stream().map(PageDom::said)).containsExactly("Orchard, pack small");
        assertThat(page.cards("Stall speed").stream()
                        .map(each -> PageDom.said(PageDom.ofClass(each, "who").get(0))))
                .containsExactly(
                        "Orchard, pack small",
                        "Orchard, pack large",
                        "Crowded House of Set-ups, pack small",
                        "Crowded House of Set-ups, pack large");
        assertThat(PageDom.ofClass(page.card("Gust to stall"), "close"))
                .isNotEmpty()
                .allMatch(line -> PageDom.said(line).contains(" ~"));
        assertThat(page.all("h2").stream().map(PageDom::said))
                .anyMatch(said -> said.startsWith("Crowded House of Set-ups: Pack small"));
        assertThat(page.all("summary").stream().map(PageDom::said))
                .anyMatch(
                        said -> said.startsWith("Orchard: Pack large") && said.endsWith("against Orchard, pack small"));
    }
}
