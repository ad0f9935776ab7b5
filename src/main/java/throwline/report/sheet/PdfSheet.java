package throwline.report.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import throwline.report.ReportFile;
import throwline.report.document.Block;
import throwline.report.document.Block.Checks;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Text;

/** A sheet drawn as a PDF file, from the top down and on to the next page. */
final class PdfSheet {

    private static final double TITLE = 1.7;
    private static final double HEADING = 1.2;
    private static final double LEADING = 1.22;
    private static final double CUT = 8;
    /** Letters of any sheet, points. */
    private static final double SMALLEST = 8;

    private final Sheet sheet;
    private final Figures figures;

    private PdfSheet(Sheet sheet, Figures figures) {
        this.sheet = sheet;
        this.figures = figures;
    }

    /** The file of a sheet. */
    static ReportFile of(Sheet sheet, Figures figures) {
        Size size = size(sheet, figures);
        try (PdfCanvas canvas =
                new PdfCanvas(size, figures.show(sheet.document().title()))) {
            Flow flow = new PdfSheet(sheet.with(size), figures).new Flow(canvas);
            flow.foot();
            return new ReportFile(sheet.name() + ".pdf", canvas.bytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The size that a sheet is drawn in: a card is made as high as what stands on it asks for, so that it stays one card. */
    static Size size(Sheet sheet, Figures figures) {
        if (!sheet.size().cut()) {
            return sheet.size();
        }
        Size highest = sheet.size().highest();
        try (PdfCanvas canvas = new PdfCanvas(highest, "")) {
            Flow flow = new PdfSheet(sheet.with(highest), figures).new Flow(canvas);
            double most = highest.cardHeight();
            return sheet.size().atLeast(flow.page == 1 ? most - (flow.bottom - flow.y) : most);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Place of the next block; with all of the document drawn, the end of the last. */
    final class Flow {
        private final PdfCanvas canvas;
        private final double font = sheet.size().font();
        private final double edge = sheet.size().cut() ? CUT : 0;
        private final double left = sheet.size().left() + edge;
        private final double width = sheet.size().cardWidth() - 2 * edge;
        private final double bottom = sheet.size().top() + sheet.size().cardHeight() - edge - 2 * font;
        private int page = 1;
        private double y;

        Flow(PdfCanvas canvas) {
            this.canvas = canvas;
            start();
            text(say(sheet.document().title()), TITLE * font, true);
            sheet.document().under().forEach(line -> text(say(line), font, false));
            y += 0.4 * font;
            sheet.document().blocks().forEach(this::block);
        }

        String say(Text text) {
            return figures.show(text);
        }

        PdfCanvas canvas() {
            return canvas;
        }

        double font() {
            return font;
        }

        double left() {
            return left;
        }

        double width() {
            return width;
        }

        double y() {
            return y;
        }

        void moveTo(double there) {
            y = there;
        }

        double lineHeight(double points) {
            return LEADING * points;
        }

        private void start() {
            y = sheet.size().top() + edge;
            if (sheet.size().cut()) {
                drawn(() -> canvas.box(
                        sheet.size().left(),
                        sheet.size().top(),
                        sheet.size().cardWidth(),
                        sheet.size().cardHeight(),
                        true));
            }
        }

        /** True where so much room is left on the page. */
        boolean fits(double height) {
            return y + height <= bottom;
        }

        /** On to the next page where so much room is not left. */
        void need(double height) {
            if (!fits(height)) {
                nextPage();
            }
        }

        void nextPage() {
            foot();
            drawn(canvas::newPage);
            page++;
            start();
        }

        void foot() {
            double points = Math.max(SMALLEST, 0.85 * font);
            double at = sheet.size().top() + sheet.size().cardHeight() - edge - 0.3 * font;
            drawn(() -> {
                canvas.text(say(sheet.foot()), left, at, points, false);
                String number = String.valueOf(page);
                canvas.text(number, left + width - canvas.width(number, points), at, points, false);
            });
        }

        private void block(Block block) {
            if (block instanceof Section section) {
                y += 0.6 * font;
                need(5 * font);
                text(say(section.heading()), HEADING * font, true);
                section.blocks().forEach(this::block);
            } else if (block instanceof Paragraph paragraph) {
                paragraph(paragraph);
            } else if (block instanceof Checks checks) {
                checks.items().forEach(item -> check(say(item)));
            } else if (block instanceof Table table) {
                new PdfTable(this, table).draw();
                y += 0.5 * font;
            } else {
                throw new IllegalArgumentException("no way to print " + block.getClass());
            }
        }

        private void paragraph(Paragraph paragraph) {
            boolean danger = paragraph.role() == Role.DANGER;
            String said = (say(paragraph.lead()) + " " + say(paragraph.text())).strip();
            text((danger ? "! " : "") + said, font, danger || paragraph.role() == Role.CAUTION);
            y += 0.3 * font;
        }

        private void text(String text, double points, boolean strong) {
            for (String line : sentences(text, points, width)) {
                need(lineHeight(points));
                double base = y + points;
                drawn(() -> canvas.text(line, left, base, points, strong));
                y += lineHeight(points);
            }
        }

        private void check(String item) {
            double indent = 1.6 * font;
            List<String> lines = sentences(item, font, width - indent);
            need(lines.size() * lineHeight(font));
            double top = y;
            drawn(() -> canvas.box(left, top + 0.25 * font, 0.85 * font, 0.85 * font, false));
            for (String line : lines) {
                double base = y + font;
                drawn(() -> canvas.text(line, left + indent, base, font, false));
                y += lineHeight(font);
            }
            y += 0.25 * font;
        }

        /** Text broken at blanks to fit a width; a word that is wider is broken inside. */
        List<String> lines(String text, double points, double room) {
            List<String> lines = new ArrayList<>();
            for (String part : text.split("\n", -1)) {
                StringBuilder line = new StringBuilder();
                for (String word : part.split(" ", -1)) {
                    String longer = line.isEmpty() ? word : line + " " + word;
                    if (measure(longer, points) <= room) {
                        line = new StringBuilder(longer);
                        continue;
                    }
                    if (!line.isEmpty()) {
                        lines.add(line.toString());
                    }
                    line = new StringBuilder(broken(word, points, room, lines));
                }
                lines.add(line.toString());
            }
            return lines;
        }

        /** The same with no word alone on the last line: that before it, where it can be spared, comes down to it. */
        private List<String> sentences(String text, double points, double room) {
            List<String> lines = lines(text, points, room);
            int last = lines.size() - 1;
            String end = lines.get(last);
            String before = last > 0 ? lines.get(last - 1) : "";
            int cut = before.lastIndexOf(' ');
            String longer = before.substring(cut + 1) + " " + end;
            if (end.indexOf(' ') < 0 && before.indexOf(' ') < cut && measure(longer, points) <= room) {
                lines.set(last - 1, before.substring(0, cut));
                lines.set(last, longer);
            }
            return lines;
        }

        /** Adds full lines of a long word and gives what is left of it. */
        private String broken(String word, double points, double room, List<String> lines) {
            String rest = word;
            while (measure(rest, points) > room && rest.length() > 1) {
                int end = rest.length() - 1;
                while (end > 1 && measure(rest.substring(0, end), points) > room) {
                    end--;
                }
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            return rest;
        }

        double measure(String text, double points) {
            try {
                return canvas.width(text, points);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        void drawn(Drawn drawing) {
            try {
                drawing.draw();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Something drawn on a PDF page. */
    @FunctionalInterface
    interface Drawn {
        void draw() throws IOException;
    }
}
