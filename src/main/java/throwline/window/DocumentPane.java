package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JEditorPane;
import javax.swing.JScrollPane;
import javax.swing.text.DefaultCaret;
import throwline.report.document.Block;
import throwline.report.document.Comparison;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Table;

/** A document in the window: its sentences and tables as text, its comparisons as tables whose numbers open. */
final class DocumentPane {

    private final Desk desk;
    private final Figures figures;
    private final Column column = new Column(6);
    private final JScrollPane scroll = column.scrolled();
    private final StringBuilder text = new StringBuilder();

    DocumentPane(Desk desk, Figures figures) {
        this.desk = desk;
        this.figures = figures;
        column.setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
    }

    JScrollPane component() {
        return scroll;
    }

    void clear() {
        column.removeAll();
        column.revalidate();
        column.repaint();
    }

    void show(Document document) {
        int place = scroll.getVerticalScrollBar().getValue();
        column.removeAll();
        document.under()
                .forEach(line ->
                        text.append("<p>").append(escaped(figures.show(line))).append("</p>"));
        document.blocks().forEach(block -> block(block, 3));
        flush();
        column.revalidate();
        column.repaint();
        scroll.getVerticalScrollBar().setValue(place);
    }

    private static String escaped(String letters) {
        return Sentence.escaped(letters);
    }

    private void block(Block block, int level) {
        if (block instanceof Block.Section section) {
            if (section.medium() != Block.Medium.TERMINAL && hasText(section)) {
                String heading = figures.show(section.heading());
                if (!heading.isEmpty()) {
                    text.append("<h").append(level).append(" style='margin:8px 0 2px 0'>");
                    text.append(escaped(heading)).append("</h").append(level).append('>');
                }
                section.blocks().forEach(each -> block(each, Math.min(6, level + 1)));
            }
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph(paragraph);
        } else if (block instanceof Block.Checks checks) {
            checks.items()
                    .forEach(item -> text.append("<p>\u2610 ")
                            .append(escaped(figures.show(item)))
                            .append("</p>"));
        } else if (block instanceof Table table) {
            table(table);
        } else if (block instanceof Comparison comparison) {
            flush();
            for (int group = 0; group < comparison.groups().size(); group++) {
                String heading = figures.show(comparison.groups().get(group).heading());
                text.append("<p><b>").append(escaped(heading)).append("</b></p>");
                flush();
                column.add(new ComparisonGrid(desk, figures, comparison, group).boxed());
            }
        }
    }

    /** Sections of pictures and enclosed files alone are not for this place. */
    private static boolean hasText(Block.Section section) {
        return section.blocks().stream()
                .anyMatch(block -> block instanceof Block.Section inner
                        ? hasText(inner)
                        : !(block instanceof Block.Pictures) && !(block instanceof Block.Enclosed));
    }

    private void paragraph(Block.Paragraph paragraph) {
        boolean danger = paragraph.role() == Role.DANGER;
        String color =
                danger ? String.format("color:#%06x;", desk.look().danger().getRGB() & 0xFFFFFF) : "";
        text.append("<p style='margin:0 0 4px 0;").append(color).append("'>");
        String lead = figures.show(paragraph.lead());
        if (!lead.isEmpty()) {
            text.append("<b>").append(danger ? "! " : "").append(escaped(lead)).append("</b> ");
        }
        text.append(escaped(figures.show(paragraph.text()))).append("</p>");
    }

    private void table(Table table) {
        text.append("<table cellpadding='2' cellspacing='0'><tr>");
        table.columns()
                .forEach(head -> text.append("<td><b>")
                        .append(escaped(figures.show(head.head())))
                        .append("</b></td>"));
        text.append("</tr>");
        for (Table.Row row : table.rows()) {
            text.append("<tr>");
            if (row instanceof Table.Cells cells) {
                cells.cells()
                        .forEach(cell ->
                                cell(cell.lines().stream().map(figures::show).toList()));
            } else if (row instanceof Table.Band band) {
                cell(List.of(figures.show(band.text())));
            } else if (row instanceof Table.Remark remark) {
                text.append("<td colspan='").append(table.columns().size()).append("'>");
                text.append(escaped(figures.show(remark.text()))).append("</td>");
            }
            text.append("</tr>");
        }
        text.append("</table>");
    }

    private void cell(List<String> lines) {
        text.append("<td valign='top'>")
                .append(String.join(
                        "<br>", lines.stream().map(DocumentPane::escaped).toList()))
                .append("&nbsp;&nbsp;</td>");
    }

    /** What was said so far becomes one piece. */
    private void flush() {
        if (text.isEmpty()) {
            return;
        }
        JEditorPane pane = new WrappedText("<html><body>" + text + "</body></html>");
        text.setLength(0);
        column.add(pane);
    }

    /** Text that is as high as its width lets it be. */
    private static final class WrappedText extends JEditorPane {

        private static final long serialVersionUID = 1;

        WrappedText(String html) {
            super("text/html", "");
            setEditable(false);
            setOpaque(false);
            putClientProperty(HONOR_DISPLAY_PROPERTIES, true);
            if (getCaret() instanceof DefaultCaret caret) {
                // Before the text comes: a caret that follows it scrolls the page to its end.
                caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
            }
            setText(html);
        }

        @Override
        public java.awt.Dimension getPreferredSize() {
            int width = getParent() == null
                    ? UIScale.scale(600)
                    : Math.max(UIScale.scale(200), getParent().getWidth() - 12);
            setSize(width, Short.MAX_VALUE);
            return new java.awt.Dimension(width, super.getPreferredSize().height);
        }
    }
}
