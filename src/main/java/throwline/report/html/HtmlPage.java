package throwline.report.html;

import java.util.List;
import java.util.Map;

/**
 * One page: what stands on it from top to bottom, in words that are ready to be shown.
 *
 * @param title the name of the page
 * @param under lines below the title
 * @param parts what follows
 */
public record HtmlPage(String title, List<String> under, List<Part> parts) {

    public HtmlPage {
        under = List.copyOf(under);
        parts = List.copyOf(parts);
    }

    /** The HTML text of the page. */
    public String html() {
        return new Templates().fill("leaf.jte", Map.of("leaf", this));
    }
}
