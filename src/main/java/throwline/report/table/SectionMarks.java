package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.report.Page;
import throwline.report.table.TextSection.Block;
import throwline.report.table.TextSection.Sentence;
import throwline.report.table.TextSection.Table;

/**
 * Marks that tell the sections of a text apart until it is shown: the separators that ASCII has for this. A text that was
 * made for a styled page without end, on which no sentence is broken, can be read back into sentences and tables: headers
 * are bold, and the gaps of the line of rules below them, two blanks wide, tell the columns apart.
 */
final class SectionMarks {

    /** A page for texts that are read back. */
    private static final int ENDLESS = 100_000;

    private static final char SECTION = '\u001e';
    private static final char BODY = '\u001f';
    private static final Pattern STYLE = Pattern.compile("\u001b\\[\\d+m");
    private static final Pattern RULE = Pattern.compile("[\u2500-]+");

    private SectionMarks() {}

    /** The page that a text must be made for, so that it can be read back. */
    static Page page(Page like) {
        return new Page(ENDLESS, true, true, like.units(), like.besideSpeed());
    }

    /** A section with its marks. */
    static String around(String heading, String body) {
        return SECTION + heading + BODY + "\n" + body + "\n" + SECTION;
    }

    /** The text as it is shown. */
    static String without(String marked) {
        return marked.replace(String.valueOf(SECTION), "").replace(String.valueOf(BODY), "");
    }

    /** All sections of a text. */
    static List<TextSection> sections(String marked) {
        List<TextSection> sections = new ArrayList<>();
        for (String piece : marked.split(String.valueOf(SECTION), -1)) {
            int body = piece.indexOf(BODY);
            if (body >= 0) {
                String heading = plain(piece.substring(0, body)).strip().replaceFirst(":$", "");
                sections.add(new TextSection(heading, blocks(piece.substring(body + 1))));
            }
        }
        return sections;
    }

    /** All sections of a text whose headings are lines that stand out and head no table. */
    static List<TextSection> byHeadings(String styled) {
        List<String> lines = styled.lines().filter(line -> !line.isBlank()).toList();
        StringBuilder marked = new StringBuilder();
        for (int i = 0; i < lines.size(); i++) {
            String below = i + 1 < lines.size() ? plain(lines.get(i + 1)).strip() : "";
            boolean inColumns = plain(lines.get(i)).stripTrailing().matches("\\s.*|.*\\s{2}.*");
            if (lines.get(i).startsWith(bold()) && !inColumns && !below.matches("[\u2500 -]+")) {
                marked.append(SECTION).append(lines.get(i)).append(BODY).append('\n');
            } else {
                marked.append(lines.get(i)).append('\n');
            }
        }
        return sections(marked.toString());
    }

    private static List<Block> blocks(String body) {
        List<Block> blocks = new ArrayList<>();
        List<String> headers = new ArrayList<>();
        List<String> lines = body.lines().filter(line -> !line.isBlank()).toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = plain(lines.get(i));
            if (!headers.isEmpty() && line.strip().matches("[\u2500 -]+")) {
                List<int[]> columns = columns(line);
                int end = i + 1;
                while (end < lines.size() && fits(plain(lines.get(end)), columns) && !headsTable(lines, end)) {
                    end++;
                }
                List<List<String>> rows = lines.subList(i + 1, end).stream()
                        .map(row -> cells(plain(row), columns))
                        .toList();
                blocks.add(new Table(joined(headers, columns), rows));
                headers.clear();
                i = end - 1;
            } else if (!lines.get(i).equals(line) && lines.get(i).stripLeading().startsWith(bold())) {
                headers.add(line);
            } else {
                blocks.add(new Sentence(line.strip()));
            }
        }
        return blocks;
    }

    /** True for a line of headers: it stands out, and lines that do so lead to a rule. */
    private static boolean headsTable(List<String> lines, int from) {
        int i = from;
        while (i < lines.size() && lines.get(i).stripLeading().startsWith(bold())) {
            i++;
        }
        return i > from && i < lines.size() && plain(lines.get(i)).strip().matches("[\u2500 -]+");
    }

    private static String bold() {
        return "\u001b[1m";
    }

    private static String plain(String line) {
        return STYLE.matcher(line).replaceAll("");
    }

    /** Where the columns begin; each ends where the next begins. */
    private static List<int[]> columns(String rule) {
        List<int[]> columns = new ArrayList<>();
        Matcher runs = RULE.matcher(rule);
        while (runs.find()) {
            columns.add(new int[] {runs.start(), runs.end()});
        }
        return columns;
    }

    /** True for a row: nothing stands in the gaps, and something beyond the first of them. */
    private static boolean fits(String line, List<int[]> columns) {
        for (int i = 1; i < columns.size(); i++) {
            String gap = cut(line, columns.get(i - 1)[1], columns.get(i)[0]);
            if (!gap.isBlank()) {
                return false;
            }
        }
        return line.length() <= columns.get(columns.size() - 1)[1];
    }

    private static List<String> cells(String line, List<int[]> columns) {
        return columns.stream()
                .map(column -> cut(line, column[0], column[1]).strip())
                .toList();
    }

    private static List<String> joined(List<String> headers, List<int[]> columns) {
        return columns.stream()
                .map(column -> headers.stream()
                        .map(line -> cut(line, column[0], column[1]).strip())
                        .filter(cell -> !cell.isEmpty())
                        .reduce((a, b) -> a + " " + b)
                        .orElse(""))
                .toList();
    }

    private static String cut(String line, int from, int to) {
        return from >= line.length() ? "" : line.substring(from, Math.min(to, line.length()));
    }
}
