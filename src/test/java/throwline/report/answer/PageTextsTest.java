package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import throwline.input.PackedAirfoils;
import throwline.report.FindFixture;
import throwline.report.Page;
import throwline.report.html.PageDom;
import throwline.section.MeasuredSections;
import throwline.study.FindResult;
import throwline.units.Display;
import throwline.validation.CaseFolder;
import throwline.validation.Validation;

/** Pages of searches and of the validation book say what their texts say. */
class PageTextsTest {

    private static final Page PAGE = Page.of(100, true, false, Display.metric());

    static Stream<FindResult> results() {
        return Stream.of(FindFixture.allFound(), FindFixture.nothingFound());
    }

    @ParameterizedTest
    @MethodSource("results")
    void every_word_of_a_search_is_on_its_page(FindResult result) {
        String html = Answers.html(Answers.find(result));
        PageDom page = PageDom.of(html);
        String said = PageDom.said(page.all("body").get(0)).replaceAll("\\s+", "");
        String text = Answers.text(Answers.find(result), PAGE).replaceAll("[\u2500]+", "");
        assertThat(text.lines().flatMap(line -> List.of(line.strip().split("\\s{2,}", -1)).stream()))
                .allSatisfy(cell -> assertThat(said).contains(cell.replaceAll("\\s+|:$", "")));
        assertPlain(page, html);
    }

    @Test
    void tables_are_tables_and_not_lines() {
        PageDom page = PageDom.of(Answers.html(Answers.find(FindFixture.allFound())));
        assertThat(page.all("table")).hasSizeGreaterThan(3);
        assertThat(page.all("svg")).isNotEmpty();
    }

    @Test
    void the_book_has_every_case() throws Exception {
        var book =
                new Validation(new MeasuredSections(), new PackedAirfoils()).run(CaseFolder.at(Path.of("validation")));
        String html = Answers.html(Answers.book(book));
        PageDom page = PageDom.of(html);
        String said = PageDom.said(page.all("body").get(0));
        assertThat(book.cases()).allSatisfy(result -> assertThat(said).contains(result.title()));
        assertThat(page.all("table")).hasSizeGreaterThan(book.cases().size());
        assertPlain(page, html);
    }

    /** Nothing is left of rules drawn with letters, nothing is fetched, every picture is described. */
    private static void assertPlain(PageDom page, String html) {
        assertThat(PageDom.said(page.all("body").get(0)))
                .doesNotContain("\u2500")
                .doesNotContain("\u001b");
        assertThat(html.replaceAll("http://www.w3.org/[0-9a-zA-Z/]*", ""))
                .doesNotContain("src=")
                .doesNotContain("url(http");
        assertThat(page.all("svg").stream()
                        .filter(svg -> svg.getAttribute("role").equals("img")))
                .isNotEmpty()
                .allSatisfy(
                        svg -> assertThat(PageDom.said(PageDom.all(svg, "title").get(0)))
                                .isNotEmpty());
    }
}
