package throwline.input;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import throwline.words.Words;

/**
 * Writes a draft as a model file with the meaning of every key above it. A key that may be left out and has no value
 * stands behind a number sign without a blank, with what is assumed for it, so that taking the sign away uses it.
 */
final class DraftWriter {

    private static final int WIDTH = 100;
    private static final int STEP = 2;
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9.+-][^:#{}\\[\\],&*|>@`]*");
    private static final Set<String> NOT_PLAIN = Set.of("null", "none", "-", "true", "false");

    private final KeyTable table;
    private final Words words;
    private final Map<String, String> assumed;
    private final Set<String> explained = new HashSet<>();
    private final StringBuilder text = new StringBuilder();

    /**
     * A writer.
     *
     * @param table the keys
     * @param words the sentences
     * @param assumed values that the reader assumes, by path
     */
    DraftWriter(KeyTable table, Words words, Map<String, String> assumed) {
        this.table = table;
        this.words = words;
        this.assumed = Map.copyOf(assumed);
    }

    /**
     * The file.
     *
     * @param draft what is known
     * @param header comment on top
     */
    String write(Draft draft, List<String> header) {
        header.forEach(line -> comment(line, 0));
        for (KeyRow key : table.root().children()) {
            text.append(key.kind() == KeyRow.Kind.VERSION ? "" : "\n");
            entry(
                    key,
                    key.name(),
                    Optional.of(draft.at()).flatMap(d -> d.child(key.name())),
                    new KeyLevel("", 0, false));
        }
        return text.toString();
    }

    /**
     * Where lines are written.
     *
     * @param path of the parent
     * @param indent blanks before keys
     * @param off true inside a group that stands behind number signs
     */
    private record KeyLevel(String path, int indent, boolean off) {
        KeyLevel below(String step, boolean turnedOff) {
            return new KeyLevel(path.isEmpty() ? step : path + "." + step, indent + STEP, off || turnedOff);
        }
    }

    private void entry(KeyRow key, String name, Optional<Draft> draft, KeyLevel place) {
        boolean group = !key.children().isEmpty();
        boolean off = place.off() || (draft.isEmpty() && !isRequired(key));
        if (!key.meaning().isEmpty() && explained.add(key.path())) {
            comment(explanation(key), place.indent());
        }
        if (!group) {
            leaf(key, name, draft, place, off);
        } else if (draft.flatMap(Draft::value).isPresent()) {
            line(place, off, scalar(name) + ": " + draft.flatMap(Draft::value).orElseThrow());
        } else {
            group(key, name, draft.orElseGet(Draft::new), place, off);
        }
    }

    private void leaf(KeyRow key, String name, Optional<Draft> draft, KeyLevel place, boolean off) {
        String path = place.below(name, false).path();
        Optional<String> value = draft.flatMap(Draft::value);
        String shown = value.map(v -> written(key, v)).orElseGet(() -> suggestion(key, path, off));
        String mark = draft.filter(Draft::isGuess).isPresent() || (off && assumed.containsKey(path))
                ? "   # " + words.say("input.new.assumed")
                : "";
        line(place, off, (scalar(name) + ": " + shown).stripTrailing() + mark);
    }

    private String suggestion(KeyRow key, String path, boolean off) {
        if (!off) {
            return "";
        }
        String fallback = key.need() == KeyRow.Need.DEFAULT ? key.needText() : key.example();
        return assumed.getOrDefault(path, fallback);
    }

    private void group(KeyRow key, String name, Draft draft, KeyLevel place, boolean off) {
        boolean named = key.anyChild().isPresent();
        boolean list = key.kind() == KeyRow.Kind.LIST;
        if (named && draft.children().isEmpty() && !off) {
            line(place, false, scalar(name) + ": {}");
            return;
        }
        line(place, off, scalar(name) + ":");
        KeyLevel inside = place.below(name, off);
        if (list) {
            draft.children().forEach((number, entry) -> listEntry(key.children().get(0), number, entry, inside));
            return;
        }
        for (KeyRow child : key.fixedChildren()) {
            entry(child, child.name(), draft.child(child.name()), inside);
        }
        key.anyChild().ifPresent(any -> names(key, any, draft, inside));
    }

    private void names(KeyRow key, KeyRow any, Draft draft, KeyLevel inside) {
        Set<String> fixed = new HashSet<>();
        key.fixedChildren().forEach(k -> fixed.add(k.name()));
        List<String> names = new ArrayList<>(draft.children().keySet());
        names.removeAll(fixed);
        if (names.isEmpty() && inside.off()) {
            entry(any, key.example().split(":", 2)[0], Optional.empty(), inside);
        }
        names.forEach(name -> entry(any, name, draft.child(name), inside));
    }

    private void listEntry(KeyRow entry, String number, Draft draft, KeyLevel inside) {
        KeyLevel place = new KeyLevel(inside.path() + "[" + number + "]", inside.indent() + STEP, inside.off());
        int before = text.length();
        for (KeyRow child : entry.fixedChildren()) {
            // Washout and set back are measured from the first station, which therefore has none.
            if (!number.equals("1")
                    || isRequired(child)
                    || draft.child(child.name()).isPresent()) {
                entry(child, child.name(), draft.child(child.name()), place);
            }
        }
        // The first key of an entry stands behind the hyphen.
        String first =
                "\n" + " ".repeat(place.indent()) + entry.fixedChildren().get(0).name() + ":";
        int at = text.indexOf(first, before - 1) + 1;
        text.replace(at + inside.indent(), at + inside.indent() + 1, "-");
    }

    private static boolean isRequired(KeyRow key) {
        return key.need() == KeyRow.Need.REQUIRED || key.need() == KeyRow.Need.REQUIRED_UNLESS;
    }

    private String explanation(KeyRow key) {
        String range = key.range()
                .map(r -> " " + words.say("input.new.range", r.leastText(), r.mostText()))
                .orElse("");
        String choices = key.choices().isEmpty() ? "" : " " + String.join(", ", key.choices()) + ".";
        String example =
                isRequired(key) && key.children().isEmpty() && key.choices().isEmpty()
                        ? " " + words.say("input.new.example", key.example())
                        : "";
        String left = isRequired(key) || key.reason().isEmpty() ? "" : " " + words.say("input.new.left", key.reason());
        return key.meaning() + choices + range + example + left;
    }

    private void comment(String sentence, int indent) {
        StringBuilder line = new StringBuilder();
        for (String word : sentence.split(" ", -1)) {
            if (line.length() + word.length() > WIDTH - indent) {
                text.append(" ".repeat(indent)).append('#').append(line).append('\n');
                line.setLength(0);
            }
            line.append(' ').append(word);
        }
        text.append(" ".repeat(indent)).append('#').append(line).append('\n');
    }

    /** A line that counts, or one behind a number sign; inside such a group the sign stands where the group begins. */
    private void line(KeyLevel place, boolean off, String content) {
        text.append(" ".repeat(place.indent()))
                .append(off ? "#" : "")
                .append(content)
                .append('\n');
    }

    private static String written(KeyRow key, String value) {
        return switch (key.kind()) {
            case TEXT, AIRFOIL -> scalar(value);
            default -> value;
        };
    }

    /** Text as YAML reads it back. */
    static String scalar(String value) {
        boolean plain = PLAIN.matcher(value).matches() && !NOT_PLAIN.contains(value) && value.equals(value.strip());
        return plain ? value : "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
