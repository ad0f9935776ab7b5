package throwline.input;

import java.util.Locale;
import java.util.stream.Collectors;
import throwline.units.Dimension;

/** Makes the tables of the reference page from the table of keys. */
final class ReferencePage {

    private ReferencePage() {}

    /** One section a key of the top level. */
    static String tables(KeyTable table) {
        StringBuilder page = new StringBuilder();
        for (KeyRow top : table.root().children()) {
            page.append("### `").append(top.name()).append("`\n\n");
            if (top.children().isEmpty()) {
                page.append(sentence(top))
                        .append(" Written as ")
                        .append(written(top))
                        .append(". ");
                page.append(capital(leftOut(top))).append(".\n\n");
            } else {
                page.append(sentence(top))
                        .append(' ')
                        .append(capital(leftOut(top)))
                        .append(".\n\n");
                page.append("| Key | What it is | Written as | If left out |\n|---|---|---|---|\n");
                rows(top, page);
                page.append('\n');
            }
        }
        return page.toString().stripTrailing() + "\n";
    }

    private static void rows(KeyRow parent, StringBuilder page) {
        for (KeyRow key : parent.children()) {
            if (!key.meaning().isEmpty()) {
                page.append("| `").append(key.path().replace(".[]", "[]")).append("` | ");
                page.append(sentence(key)).append(" | ").append(written(key)).append(" | ");
                page.append(leftOut(key)).append(" |\n");
            }
            rows(key, page);
        }
    }

    private static String sentence(KeyRow key) {
        return key.meaning();
    }

    private static String written(KeyRow key) {
        String kind =
                switch (key.kind()) {
                    case GROUP, NAMED -> "keys";
                    case LIST -> "a list";
                    case TEXT -> "a name";
                    case NAMES -> "one name or a list";
                    case AIRFOIL -> "an airfoil";
                    case VERSION -> "a number";
                    case COUNT -> "a whole number";
                    case CHOICE ->
                        key.choices().stream().map(c -> "`" + c + "`").collect(Collectors.joining(", "));
                    case DEFLECTION -> "a deflection";
                    case THROWS -> "a throw each way";
                    case THROW -> "a deflection, or a throw each way";
                    case QUANTITY -> quantity(key.dimension().orElseThrow());
                };
        String range = key.range()
                .map(r -> ", " + r.leastText() + " to " + r.mostText())
                .orElse("");
        boolean shown = key.kind() != KeyRow.Kind.CHOICE && !key.example().isEmpty();
        return kind + range + (shown ? ": `" + key.example() + "`" : "");
    }

    private static String quantity(Dimension dimension) {
        return switch (dimension) {
            case ANGLE -> "an angle";
            case MASS -> "a weight";
            case FRACTION -> "a share";
            default -> "a " + dimension.name().toLowerCase(Locale.ROOT);
        };
    }

    private static String leftOut(KeyRow key) {
        String reason = key.reason().isEmpty() ? "" : ": " + key.reason().replaceFirst("\\.$", "");
        return switch (key.need()) {
            case REQUIRED -> "required";
            case REQUIRED_UNLESS -> "required, unless `" + key.needText() + "` is given";
            case OPTIONAL -> key.children().isEmpty() ? "nothing is assumed" : "optional";
            case OR_NONE -> "none" + reason;
            case DEFAULT -> "`" + key.needText() + "`" + reason;
            case WORKED_OUT -> "worked out" + reason;
        };
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
