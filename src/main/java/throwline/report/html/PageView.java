package throwline.report.html;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import throwline.report.Page;
import throwline.report.document.Block;
import throwline.report.document.Block.Enclosed;
import throwline.report.document.Block.Medium;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Pictures;
import throwline.report.document.Block.Section;
import throwline.report.document.Comparison;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.document.PagePicture;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Align;
import throwline.report.document.Table.Cell;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.words.Words;

/** A document as its templates see it: texts in words, rows as cards. Templates escape all that is shown but drawings. */
public final class PageView {

    private final Document document;
    private final Figures figures;

    /**
     * A document in words.
     *
     * @param document what it says
     * @param figures numbers as they are read there
     */
    public PageView(Document document, Figures figures) {
        this.document = document;
        this.figures = figures;
    }

    /**
     * The HTML text of a document.
     *
     * @param document what it says
     * @param page units of the reader
     * @param words the file of words
     */
    public static String html(Document document, Page page, Words words) {
        return new Templates().fill("leaf.jte", Map.of("view", new PageView(document, new Figures(page, words))));
    }

    /**
     * Blocks that are shown together: sentences in one list, or anything else by itself.
     *
     * @param sentences in order; empty where it is not a list of sentences
     * @param block what else it is; the first sentence where it is a list
     */
    public record Run(List<Paragraph> sentences, Block block) {
        public Run {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * Pictures, with the lines that all of them share said once.
     *
     * @param intro those lines
     * @param pictures in order
     */
    public record Gallery(String intro, List<PagePicture> pictures) {
        public Gallery {
            pictures = List.copyOf(pictures);
        }
    }

    /** The document. */
    public Document document() {
        return document;
    }

    /** A text in words. */
    public String say(Text text) {
        return figures.show(text);
    }

    /** A sentence of the file of words. */
    public String say(String key, String... arguments) {
        return say(Text.say(key, (Object[]) arguments));
    }

    /** What of these blocks a page shows, sentences that follow each other together. */
    public List<Run> runs(List<Block> blocks) {
        List<Run> runs = new ArrayList<>();
        List<Paragraph> sentences = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Paragraph paragraph) {
                sentences.add(paragraph);
            } else if (isShown(block)) {
                end(runs, sentences);
                runs.add(new Run(List.of(), block));
            }
        }
        end(runs, sentences);
        return runs;
    }

    private static void end(List<Run> runs, List<Paragraph> sentences) {
        if (!sentences.isEmpty()) {
            runs.add(new Run(sentences, sentences.get(0)));
            sentences.clear();
        }
    }

    private static boolean isShown(Block block) {
        return !(block instanceof Section section)
                || (section.medium() != Medium.TERMINAL && !section.blocks().isEmpty());
    }

    /** The rows of a comparison. */
    public List<Card> cards(Comparison comparison, Block.Depth depth) {
        return new CardMaker(comparison, figures).cards(depth);
    }

    /** Widths of the columns of a table as a style sheet has them; empty where they are as wide as they need. */
    public List<String> widths(Table table) {
        double total = table.columns().stream().mapToDouble(Column::weight).sum();
        boolean given = table.columns().stream().anyMatch(column -> column.weight() != 1);
        return given
                ? table.columns().stream()
                        .map(column -> String.format(Locale.ROOT, "%.2f%%", 100 * column.weight() / total))
                        .toList()
                : List.of();
    }

    /** Names by which a style sheet knows a cell. */
    public String style(Table table, int column, Cell cell) {
        boolean right = table.columns().get(column).align() == Align.RIGHT;
        return (column == 0 && !right ? "label" : "cell")
                + (right ? " right" : "")
                + (table.beginsGroup(column) ? " edge" : "")
                + (cell.role() == Role.PLAIN ? "" : " " + style(cell.role()));
    }

    /** Name by which a style sheet knows a role. */
    public String style(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }

    /** Pictures drawn for a page. */
    public Gallery gallery(Pictures block) {
        List<PagePicture> pictures = block.source().draw();
        if (pictures.size() < 2) {
            return new Gallery("", pictures);
        }
        List<String> shared = pictures.get(0).caption().stream()
                .filter(line ->
                        pictures.stream().allMatch(picture -> picture.caption().contains(line)))
                .toList();
        String proof = pictures.get(0).proof();
        boolean oneProof = pictures.stream().allMatch(picture -> picture.proof().equals(proof));
        String intro = String.join(" ", shared) + (oneProof ? " " + proof : "");
        return new Gallery(
                intro.strip(),
                pictures.stream()
                        .map(picture -> picture.without(shared, oneProof))
                        .toList());
    }

    /** A file as an address that holds it. */
    public String address(Enclosed file) {
        byte[] bytes = file.content().getBytes(StandardCharsets.UTF_8);
        return "data:application/octet-stream;base64," + Base64.getEncoder().encodeToString(bytes);
    }
}
