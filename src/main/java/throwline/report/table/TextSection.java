package throwline.report.table;

import java.util.List;

/**
 * A section of a text, for those who show it otherwise than as lines.
 *
 * @param heading without its colon
 * @param blocks what stands below it, in order
 */
public record TextSection(String heading, List<Block> blocks) {

    public TextSection {
        blocks = List.copyOf(blocks);
    }

    /** Sentences or a table. */
    public sealed interface Block {}

    /**
     * One sentence.
     *
     * @param text all of it
     */
    public record Sentence(String text) implements Block {}

    /**
     * A table.
     *
     * @param headers one a column
     * @param rows cells, as many as headers
     */
    public record Table(List<String> headers, List<List<String>> rows) implements Block {
        public Table {
            headers = List.copyOf(headers);
            rows = List.copyOf(rows);
        }
    }
}
