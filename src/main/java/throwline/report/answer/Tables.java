package throwline.report.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import throwline.report.document.Table;
import throwline.report.document.Table.Cells;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;

/** Tables made of things that are alike: a column each, or a row each. */
final class Tables {

    private Tables() {}

    /** A table with labels on the left and a column a thing. */
    static <T> Table labelled(List<T> things, Function<T, Text> head, List<Table.Row> rows) {
        List<Column> columns = new ArrayList<>(List.of(Column.left(Text.none())));
        things.forEach(thing -> columns.add(Column.left(head.apply(thing))));
        return new Table(columns, rows);
    }

    /** A row of such a table. */
    static <T> Cells row(Text label, List<T> things, Function<T, ? extends Text> cell) {
        List<Text> cells = new ArrayList<>(List.of(label));
        things.forEach(thing -> cells.add(cell.apply(thing)));
        return Cells.of(cells);
    }

    /** Columns of numbers whose heads have these keys. */
    static List<Column> numbers(String... keys) {
        return Arrays.stream(keys).map(key -> Column.right(Text.say(key))).toList();
    }

    /** Columns of words whose heads have these keys. */
    static List<Column> words(String... keys) {
        return Arrays.stream(keys).map(key -> Column.left(Text.say(key))).toList();
    }

    /** A table with a row a thing. */
    static <T> Table listing(List<Column> columns, List<T> things, Function<T, Cells> row) {
        return new Table(columns, things.stream().<Table.Row>map(row).toList());
    }
}
