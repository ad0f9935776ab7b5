package throwline.report.terminal;

import java.util.ArrayList;
import java.util.List;
import throwline.report.Page;
import throwline.report.document.Block;
import throwline.report.document.Comparison;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.words.Words;

/** Documents as lines of text: folded to a width, bold and coloured by role, in the letters that the place can show. */
public final class TerminalRenderer {

    /** Narrower than this nothing is laid out. */
    private static final int NARROWEST = 20;

    /** Widths at which cells of other tables are broken. */
    private static final int[] OTHERS = {Integer.MAX_VALUE, 48, 36, 24, 18, 14, 12, 16};

    private static final String INDENT = "  ";

    /** Room to write in. */
    private static final String BLANK = "____";

    private final Page page;
    private final Figures figures;
    private final boolean all;

    /**
     * A renderer.
     *
     * @param page what the place can show
     * @param words the file of words
     * @param all true where nothing is folded
     */
    public TerminalRenderer(Page page, Words words, boolean all) {
        this.page = page.atLeast(NARROWEST);
        this.all = all;
        figures = new Figures(page, words);
    }

    /** The whole document. */
    public String write(Document document) {
        List<String> lines = new ArrayList<>();
        if (!document.title().isEmpty()) {
            lines.addAll(strong("", "", document.title()));
        }
        document.under().forEach(line -> lines.addAll(paragraph("", "", line)));
        boolean sentence = false;
        List<Text> folded = new ArrayList<>();
        for (Block block : document.blocks()) {
            if (isFolded(block)) {
                folded.add(((Block.Section) block).heading());
                continue;
            }
            List<String> shown = block(block, "");
            if (!shown.isEmpty() && !folded.isEmpty() && isLast(block)) {
                lines.add("");
                lines.addAll(folded(folded));
                folded.clear();
            }
            if (!shown.isEmpty()) {
                boolean together = sentence && block instanceof Block.Paragraph;
                lines.addAll(together || lines.isEmpty() ? List.of() : List.of(""));
                lines.addAll(shown);
                sentence = block instanceof Block.Paragraph;
            }
        }
        if (!folded.isEmpty()) {
            lines.add("");
            lines.addAll(folded(folded));
        }
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(page.shown(line)).append('\n'));
        return text.toString();
    }

    /** True for what is shown only when it is asked for. */
    private boolean isFolded(Block block) {
        return !all
                && block instanceof Block.Section section
                && section.medium() != Block.Medium.PAGE
                && section.depth() == Block.Depth.DETAIL
                && !section.blocks().isEmpty();
    }

    /** True for cautions, which stand at the end. */
    private static boolean isLast(Block block) {
        return block instanceof Block.Section section && section.role() == Role.CAUTION;
    }

    /** What else there is, in one sentence: each heading once, without what it adds after a comma. */
    private List<String> folded(List<Text> headings) {
        List<String> names = headings.stream()
                .map(heading -> figures.show(heading).split(",", 2)[0])
                .distinct()
                .toList();
        return paragraph("", "  ", Text.say("document.folded", Text.join(Text.Join.SEMICOLON, names, Text::name)));
    }

    private List<String> block(Block block, String indent) {
        if (block instanceof Block.Section section) {
            return section(section, indent);
        }
        if (block instanceof Block.Paragraph paragraph) {
            return paragraph(paragraph, indent);
        }
        if (block instanceof Block.Checks checks) {
            return checks.items().stream()
                    .flatMap(item -> paragraph(indent + "[ ] ", indent + "    ", item).stream())
                    .toList();
        }
        if (block instanceof Table table) {
            return table(table);
        }
        return block instanceof Comparison comparison ? comparison(comparison) : List.of();
    }

    private List<String> section(Block.Section section, String indent) {
        List<String> lines = new ArrayList<>();
        if (section.medium() == Block.Medium.PAGE) {
            return lines;
        }
        String inner = section.heading().isEmpty() ? indent : indent + "  ";
        boolean table = false;
        for (Block block : section.blocks()) {
            lines.addAll(table && block instanceof Table ? List.of("") : List.of());
            lines.addAll(block(block, inner));
            table = block instanceof Table;
        }
        if (!lines.isEmpty() && !section.heading().isEmpty()) {
            lines.addAll(0, strong(indent, indent, section.heading()));
        }
        return lines;
    }

    private List<String> paragraph(Block.Paragraph paragraph, String indent) {
        String others = indent.isEmpty() ? "" : indent + "  ";
        if (paragraph.role() == Role.DANGER) {
            return paragraph("! ", "  ", whole(paragraph)).stream()
                    .map(page::danger)
                    .toList();
        }
        if (paragraph.role() == Role.REMARK) {
            return paragraph(indent + INDENT, indent + INDENT + INDENT, whole(paragraph));
        }
        List<String> lines = paragraph(indent, others, whole(paragraph));
        return paragraph.role() == Role.QUIET ? lines.stream().map(page::dim).toList() : lines;
    }

    private static Text whole(Block.Paragraph paragraph) {
        return paragraph.lead().isEmpty()
                ? paragraph.text()
                : Text.join(Text.Join.BLANK, List.of(paragraph.lead(), paragraph.text()));
    }

    private List<String> strong(String first, String others, Text text) {
        return paragraph(first, others, text).stream().map(page::bold).toList();
    }

    private List<String> paragraph(String first, String others, Text text) {
        return Wrapped.paragraph(first, others, figures.show(text), page.width());
    }

    private List<String> table(Table table) {
        List<ColumnLayout.Head> heads = table.columns().stream()
                .map(column ->
                        new ColumnLayout.Head(figures.show(column.label()), column.align() == Table.Align.RIGHT, true))
                .toList();
        ColumnLayout layout = new ColumnLayout(page, heads, Integer.MAX_VALUE, OTHERS);
        for (Table.Row row : table.rows()) {
            if (row instanceof Table.Cells cells) {
                boolean quiet = cells.role() == Role.QUIET;
                List<List<String>> lines =
                        new ArrayList<>(cells.cells().stream().map(this::lines).toList());
                if (quiet) {
                    lines.set(
                            0, lines.get(0).stream().map(line -> INDENT + line).toList());
                }
                layout.row(lines, quiet);
            } else if (row instanceof Table.Band band) {
                layout.across(figures.show(band(band)));
            } else if (row instanceof Table.Remark remark) {
                layout.across("  " + figures.show(remark.text()));
            }
        }
        return layout.lines();
    }

    private static Text band(Table.Band band) {
        Text filled = band.filled().isEmpty() ? Text.name(BLANK) : band.filled();
        return band.blank().isEmpty()
                ? band.text()
                : Text.join(Text.Join.BLANK, List.of(band.text(), Text.name("-"), band.blank(), filled));
    }

    private List<String> lines(Table.Cell cell) {
        return switch (cell.role()) {
            case TICK -> List.of("[ ]");
            case BLANK -> List.of(BLANK);
            default -> cell.lines().stream().map(figures::show).toList();
        };
    }

    private List<String> comparison(Comparison comparison) {
        List<String> lines = new ArrayList<>();
        for (int group = 0; group < comparison.groups().size(); group++) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of(""));
            group(comparison.groups().get(group), lines);
            lines.addAll(new ComparisonTable(page, figures, all).lines(comparison, group));
        }
        return lines;
    }

    private void group(Comparison.Group group, List<String> lines) {
        if (!group.heading().isEmpty()) {
            lines.addAll(strong("", "", group.heading()));
            group.warnings()
                    .forEach(warning ->
                            lines.addAll(paragraph(new Block.Paragraph(Role.DANGER, Text.none(), warning), "")));
            lines.add("");
        }
    }
}
