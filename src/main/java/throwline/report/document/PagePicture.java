package throwline.report.document;

import java.util.List;

/**
 * A chart as part of a page: what stands above and below it is text of the page, so that it can be read aloud and broken
 * to any width.
 *
 * @param name of the chart, without blanks
 * @param title the question that it answers
 * @param caption what it holds for
 * @param proof what kind of numbers it shows; may be empty
 * @param description what is in it, for those who cannot see it
 * @param svg one SVG element whose names are its own on the page
 */
public record PagePicture(
        String name, String title, List<String> caption, String proof, String description, String svg) {
    public PagePicture {
        caption = List.copyOf(caption);
    }

    /** The same without lines that are said elsewhere. */
    public PagePicture without(List<String> lines, boolean withoutProof) {
        List<String> rest =
                caption.stream().filter(line -> !lines.contains(line)).toList();
        return new PagePicture(name, title, rest, withoutProof ? "" : proof, description, svg);
    }
}
