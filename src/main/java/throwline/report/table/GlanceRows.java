package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** The rows that a flyer reads first, for those who show them otherwise than as lines of text. */
public final class GlanceRows {

    private final Page page;
    private final Words words;

    /**
     * Rows for this page.
     *
     * @param page where they are shown
     * @param words the sentences
     */
    public GlanceRows(Page page, Words words) {
        this.page = page;
        this.words = words;
    }

    /**
     * One row.
     *
     * @param key its name in the words; empty where it has none
     * @param label its name for people, behind that of its heading where it stands below one
     * @param cells one a set-up
     */
    public record GlanceRow(String key, String label, List<GlanceCell> cells) {
        public GlanceRow {
            cells = List.copyOf(cells);
        }
    }

    /**
     * What a row says of one set-up.
     *
     * @param text what is read first
     * @param more what stands below it
     * @param number what the text shows, where it shows a headline number
     */
    public record GlanceCell(String text, List<More> more, Optional<Headline> number) {
        public GlanceCell {
            more = List.copyOf(more);
        }
    }

    /**
     * More about a cell.
     *
     * @param label what it is; may be empty
     * @param text what it says
     */
    public record More(String label, String text) {}

    /** The rows of these set-ups. */
    public List<GlanceRow> of(Model model, List<SetUpResult> setUps) {
        Sentences sentences = new Sentences(words, page.units());
        return grouped(
                new FlyersRows(model, setUps, page, words, sentences, new Footnotes())
                        .grid()
                        .rows(),
                setUps.size());
    }

    /** Where the surfaces stand: a row a surface. */
    public List<GlanceRow> surfaces(Model model) {
        return grouped(
                new SurfaceRows(model, page, words).grid().rows(),
                model.setUps().size());
    }

    /** What full stick adds: a sentence a stick. */
    public List<String> sticks(Model model) {
        return new SurfaceRows(model, page, words).stickLines();
    }

    private List<GlanceRow> grouped(List<Grid.Row> rows, int columns) {
        List<GlanceRow> grouped = new ArrayList<>();
        String heading = "";
        for (int i = 0; i < rows.size(); i++) {
            Grid.Row row = rows.get(i);
            if (row.quiet()) {
                continue;
            }
            if (row.cells().stream().allMatch(String::isEmpty)) {
                heading = row.label();
                continue;
            }
            int end = i + 1;
            while (end < rows.size() && rows.get(end).quiet()) {
                end++;
            }
            List<GlanceCell> cells = new ArrayList<>();
            for (int column = 0; column < columns; column++) {
                cells.add(cell(row, rows.subList(i + 1, end), column));
            }
            boolean below = row.label().startsWith(" ");
            String label = below ? words.say("row.below", heading, row.label().strip()) : row.label();
            grouped.add(new GlanceRow(row.key(), label, cells));
        }
        return grouped;
    }

    private static GlanceCell cell(Grid.Row row, List<Grid.Row> below, int column) {
        List<More> more = below.stream()
                .filter(line -> !line.cells().get(column).isEmpty())
                .map(line -> new More(line.label().strip(), line.cells().get(column)))
                .toList();
        Optional<Headline> number =
                row.numbers().isEmpty() ? Optional.empty() : row.numbers().get(column);
        return new GlanceCell(row.cells().get(column), more, number);
    }
}
