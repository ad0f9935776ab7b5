package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import throwline.words.Words;

/**
 * A draft as a short model file: only what has a value, in the order of the table of keys; groups of a few values on one
 * line between braces. A value that was not answered is named as assumed at the end of its line.
 */
final class ShortDraft {

    private static final int WIDTH = 100;
    private static final int STEP = 2;

    private final KeyTable table;
    private final Words words;
    private final StringBuilder text = new StringBuilder();

    ShortDraft(KeyTable table, Words words) {
        this.table = table;
        this.words = words;
    }

    /** The file, with these comments on top. */
    String write(Draft draft, List<String> header) {
        header.forEach(line -> text.append("# ").append(line).append('\n'));
        for (KeyRow key : table.root().children()) {
            draft.child(key.name()).ifPresent(child -> entry(key, key.name(), child, 0, ""));
        }
        return text.toString();
    }

    private void entry(KeyRow key, String name, Draft draft, int indent, String hyphen) {
        String start = " ".repeat(indent) + hyphen + DraftWriter.scalar(name) + ":";
        String flow = start + " " + flow(key, draft);
        boolean top =
                indent == 0 && !draft.children().isEmpty() && key.anyChild().isPresent();
        boolean list = key.kind() == KeyRow.Kind.LIST;
        if (!top && !list && flow.length() <= WIDTH) {
            text.append(flow).append(mark(draft)).append('\n');
            return;
        }
        text.append(start).append('\n');
        for (Map.Entry<String, Draft> child : ordered(key, draft)) {
            KeyRow kind = child(key, child.getKey());
            if (list) {
                text.append(" ".repeat(indent + STEP))
                        .append("- ")
                        .append(flow(kind, child.getValue()))
                        .append(mark(child.getValue()))
                        .append('\n');
            } else {
                entry(kind, child.getKey(), child.getValue(), indent + STEP, "");
            }
        }
    }

    /** A value, or a group between braces. */
    private String flow(KeyRow key, Draft draft) {
        if (draft.value().isPresent()) {
            String value = draft.value().get();
            boolean written = key.kind() == KeyRow.Kind.TEXT || key.kind() == KeyRow.Kind.AIRFOIL;
            return written ? DraftWriter.scalar(value) : value;
        }
        return ordered(key, draft).stream()
                .map(child ->
                        DraftWriter.scalar(child.getKey()) + ": " + flow(child(key, child.getKey()), child.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** Names what was not answered. */
    private String mark(Draft draft) {
        List<String> guessed = new ArrayList<>();
        guessed("", draft, guessed);
        return guessed.isEmpty()
                ? ""
                : "   # " + words.say("input.new.assumed")
                        + (guessed.equals(List.of("")) ? "" : ": " + String.join(", ", guessed));
    }

    private static void guessed(String name, Draft draft, List<String> all) {
        if (draft.isGuess()) {
            all.add(name);
        }
        draft.children().forEach((step, child) -> guessed(step, child, all));
    }

    /** Children in the order of the table, names of the owner's choice behind them. */
    private static List<Map.Entry<String, Draft>> ordered(KeyRow key, Draft draft) {
        List<String> fixed = key.fixedChildren().stream().map(KeyRow::name).toList();
        List<Map.Entry<String, Draft>> all = new ArrayList<>();
        for (String name : fixed) {
            draft.child(name).ifPresent(child -> all.add(Map.entry(name, child)));
        }
        draft.children().forEach((name, child) -> {
            if (!fixed.contains(name)) {
                all.add(Map.entry(name, child));
            }
        });
        return all;
    }

    private static KeyRow child(KeyRow key, String name) {
        return key.kind() == KeyRow.Kind.LIST
                ? key.children().get(0)
                : key.child(name).or(key::anyChild).orElseThrow();
    }
}
