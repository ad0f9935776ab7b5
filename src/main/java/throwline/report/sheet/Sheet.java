package throwline.report.sheet;

import java.util.List;
import throwline.report.document.Block;
import throwline.report.document.Document;
import throwline.report.document.Text;

/**
 * A document for paper of some size.
 *
 * @param name of the file, without its ending
 * @param document what stands on it
 * @param foot at the bottom of each page
 * @param size of the paper or card
 */
public record Sheet(String name, Document document, Text foot, Size size) {

    /** A sheet with one line below its title. */
    static Sheet of(String name, Text title, Text below, Size size, List<Block> blocks) {
        return new Sheet(name, new Document(title, List.of(below), blocks), Text.say("sheet.foot", title), size);
    }

    /** The same in another size. */
    Sheet with(Size other) {
        return new Sheet(name, document, foot, other);
    }
}
