package throwline.report.document;

import java.util.List;

/**
 * An answer, made once and shown by each renderer in its own way.
 *
 * @param title its name
 * @param under lines below the title
 * @param blocks from top to bottom
 */
public record Document(Text title, List<Text> under, List<Block> blocks) {

    public Document {
        under = List.copyOf(under);
        blocks = List.copyOf(blocks);
    }
}
