package throwline.input;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import throwline.section.AirfoilLibrary;

/**
 * Text of a model file that is changed entry by entry; all else, comments and order too, stays as it is. Places are paths:
 * names of keys, and {@code [3]} for the third entry of a list. A change that the layout of the file leaves no room for is
 * empty.
 */
public final class ModelText {

    private final String text;
    /** Made when it is first needed; a text is asked for many of its values. */
    private volatile Optional<Optional<TextTree>> read = Optional.empty();

    /** This text. */
    public ModelText(String text) {
        this.text = text;
    }

    private Optional<TextTree> tree() {
        Optional<TextTree> tree = read.orElseGet(() -> TextTree.of(text));
        read = Optional.of(tree);
        return tree;
    }

    /** The text. */
    public String text() {
        return text;
    }

    /** What the text describes, read as a model file is. */
    public ReadModel read(String shownAs, AirfoilLibrary library) {
        return ModelFile.read(text, shownAs, library);
    }

    /** What stands at a path, as written; empty where nothing does. */
    public Optional<String> at(List<String> path) {
        return tree().flatMap(tree -> tree.find(path).map(node -> written(tree, node)));
    }

    private static String written(TextTree tree, Node node) {
        return node instanceof ScalarNode scalar ? scalar.getValue() : tree.letters(node);
    }

    /** Names of the entries of a group, in the order of the file. */
    public List<String> names(List<String> path) {
        return tree().flatMap(tree -> tree.find(path))
                .filter(MappingNode.class::isInstance)
                .map(node -> ((MappingNode) node)
                        .getValue().stream().map(TextTree::name).toList())
                .orElse(List.of());
    }

    /**
     * The same with a value at a path, in place of what stood there or as a new entry behind its neighbours.
     *
     * @param path where
     * @param value as a file has it: {@link #plain} makes it of any letters
     */
    public Optional<ModelText> with(List<String> path, String value) {
        return tree().flatMap(tree -> tree.find(path)
                        .map(node -> Optional.of(replaced(tree, node, value)))
                        .orElseGet(() -> added(tree, path, value)))
                .flatMap(ModelText::checked)
                .filter(changed -> changed.at(path).isPresent());
    }

    private static String replaced(TextTree tree, Node node, String value) {
        String gap = tree.isEmpty(node) ? " " : "";
        return cut(tree.text(), tree.start(node), tree.end(node), gap + value);
    }

    private static Optional<String> added(TextTree tree, List<String> path, String value) {
        int known = path.size() - 1;
        while (known > 0 && tree.find(path.subList(0, known)).isEmpty()) {
            known--;
        }
        StringBuilder entry = new StringBuilder(plain(path.get(known)) + ": ");
        for (String step : path.subList(known + 1, path.size())) {
            entry.append('{').append(plain(step)).append(": ");
        }
        entry.append(value).append("}".repeat(path.size() - known - 1));
        Node parent = tree.find(path.subList(0, known)).orElseThrow();
        if (tree.isEmpty(parent)) {
            return Optional.of(replaced(tree, parent, "{" + entry + "}"));
        }
        return parent instanceof MappingNode mapping
                ? Optional.of(inserted(tree, mapping, mapping.getValue().size() - 1, entry.toString()))
                : Optional.empty();
    }

    /** The text with an entry behind the one of this index. */
    private static String inserted(TextTree tree, MappingNode mapping, int behind, String entry) {
        if (behind < 0) {
            int at = tree.start(mapping) + 1;
            return cut(tree.text(), at, at, entry);
        }
        NodeTuple last = mapping.getValue().get(behind);
        int end = tree.end(last.getValueNode());
        if (TextTree.isFlow(mapping)) {
            return cut(tree.text(), end, end, ", " + entry);
        }
        int first = tree.start(mapping.getValue().get(0).getKeyNode());
        String indent = " ".repeat(first - tree.lineStart(first));
        int at = tree.nextLine(end);
        String before = tree.text().charAt(at - 1) == '\n' ? "" : tree.lineEnd();
        return cut(tree.text(), at, at, before + indent + entry + tree.lineEnd());
    }

    /** The same without an entry. */
    public Optional<ModelText> without(List<String> path) {
        return change(path, (tree, mapping, index) -> {
            List<NodeTuple> all = mapping.getValue();
            NodeTuple entry = all.get(index);
            if (!TextTree.isFlow(mapping)) {
                int end = tree.nextLine(tree.end(entry.getValueNode()));
                return tree.hasOwnLines(entry)
                        ? Optional.of(cut(tree.text(), tree.entryStart(entry), end, ""))
                        : Optional.empty();
            }
            int start = tree.start(entry.getKeyNode());
            int end = tree.end(entry.getValueNode());
            if (index + 1 < all.size()) {
                end = tree.start(all.get(index + 1).getKeyNode());
            } else if (index > 0) {
                start = tree.end(all.get(index - 1).getValueNode());
            }
            return Optional.of(cut(tree.text(), start, end, ""));
        });
    }

    /** The same with another name for an entry. */
    public Optional<ModelText> renamed(List<String> path, String name) {
        return change(path, (tree, mapping, index) -> {
            Node key = mapping.getValue().get(index).getKeyNode();
            return Optional.of(cut(tree.text(), tree.start(key), tree.end(key), plain(name)));
        });
    }

    /** The same with a copy of an entry behind it. */
    public Optional<ModelText> copied(List<String> path, String name) {
        return change(path, (tree, mapping, index) -> {
            Node value = mapping.getValue().get(index).getValueNode();
            String letters = tree.letters(value);
            return value instanceof ScalarNode || TextTree.isFlow(value)
                    ? Optional.of(inserted(tree, mapping, index, (plain(name) + ": " + letters).strip()))
                    : Optional.empty();
        });
    }

    /** The same with an entry and the one behind it in each other's place. */
    public Optional<ModelText> swapped(List<String> path) {
        return change(path, (tree, mapping, index) -> {
            List<NodeTuple> all = mapping.getValue();
            if (index + 1 >= all.size()) {
                return Optional.empty();
            }
            NodeTuple first = all.get(index);
            NodeTuple second = all.get(index + 1);
            boolean flow = TextTree.isFlow(mapping);
            if (!flow && !(tree.hasOwnLines(first) && tree.hasOwnLines(second))) {
                return Optional.empty();
            }
            int[] places = {
                flow ? tree.start(first.getKeyNode()) : tree.entryStart(first),
                flow ? tree.end(first.getValueNode()) : tree.nextLine(tree.end(first.getValueNode())),
                flow ? tree.start(second.getKeyNode()) : tree.entryStart(second),
                flow ? tree.end(second.getValueNode()) : tree.nextLine(tree.end(second.getValueNode()))
            };
            String all4 = tree.text();
            String last = all4.substring(places[2], places[3]);
            String lineEnd = flow || last.endsWith("\n") ? "" : tree.lineEnd();
            return Optional.of(cut(
                    all4,
                    places[0],
                    places[3],
                    last + lineEnd + all4.substring(places[1], places[2]) + all4.substring(places[0], places[1])));
        });
    }

    /** Change of an entry of a mapping. */
    private interface Change {
        Optional<String> make(TextTree tree, MappingNode mapping, int index);
    }

    private Optional<ModelText> change(List<String> path, Change change) {
        Optional<TextTree> whole = tree();
        if (whole.isEmpty()) {
            return Optional.empty();
        }
        TextTree tree = whole.get();
        String name = path.get(path.size() - 1);
        return tree.find(path.subList(0, path.size() - 1))
                .filter(parent -> TextTree.index(parent, name) >= 0)
                .flatMap(parent -> change.make(tree, (MappingNode) parent, TextTree.index(parent, name)))
                .flatMap(ModelText::checked);
    }

    private static Optional<ModelText> checked(String changed) {
        return TextTree.of(changed).map(tree -> new ModelText(changed));
    }

    private static String cut(String text, int from, int to, String put) {
        return text.substring(0, from) + put + text.substring(to);
    }

    /** A typed value as a file has it: a group or a list as it is, anything else as {@link #plain} makes it. */
    public static String value(String typed) {
        String stripped = typed.strip();
        return stripped.startsWith("{") || stripped.startsWith("[") ? stripped : plain(stripped);
    }

    /** Letters as a file has them: plain where that cannot be read as anything else, else in quotes. */
    public static String plain(String letters) {
        Predicate<String> isPlain = each -> each.matches("(?:[A-Za-z]|-?[0-9.])(?:[A-Za-z0-9 ./%^+_-]*[A-Za-z0-9%.])?");
        boolean reserved = letters.matches("(?i)true|false|null|yes|no|on|off|none");
        return isPlain.test(letters) && !reserved
                ? letters
                : '"' + letters.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
