package throwline.input;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** The entries of a list in the text of a model file: one comes or goes, the rest of the text stays to the letter. */
public final class ListEntries {

    private final ModelText text;
    private final List<String> path;

    /**
     * The entries of a list.
     *
     * @param text of the model file
     * @param path of the list
     */
    public ListEntries(ModelText text, List<String> path) {
        this.text = text;
        this.path = List.copyOf(path);
    }

    /** Place of an entry in a list of this text. */
    private record FilePlace(TextTree tree, SequenceNode list, int index) {

        Node node() {
            return list.getValue().get(index);
        }

        int start() {
            return tree.start(node());
        }

        int end() {
            return tree.end(node());
        }

        boolean hasOwnLines() {
            return tree.text()
                    .substring(tree.lineStart(start()), start())
                    .strip()
                    .equals("-");
        }
    }

    private Optional<FilePlace> place(int entry) {
        return TextTree.of(text.text())
                .flatMap(tree -> tree.find(path)
                        .filter(SequenceNode.class::isInstance)
                        .map(SequenceNode.class::cast)
                        .filter(list -> entry >= 1 && entry <= list.getValue().size())
                        .map(list -> new FilePlace(tree, list, entry - 1))
                        .filter(place -> TextTree.isFlow(place.list()) || place.hasOwnLines()));
    }

    /**
     * The same with another entry.
     *
     * @param behind number of the entry before it, from 1
     * @param value as a file has it
     */
    public Optional<ModelText> with(int behind, String value) {
        return place(behind).flatMap(place -> {
            TextTree tree = place.tree();
            if (TextTree.isFlow(place.list())) {
                return put(place.end(), place.end(), ", " + value);
            }
            int line = tree.lineStart(place.start());
            String dash = tree.text().substring(line, place.start());
            int at = tree.nextLine(place.end());
            String before = tree.text().charAt(at - 1) == '\n' ? "" : tree.lineEnd();
            return put(at, at, before + dash + value + tree.lineEnd());
        });
    }

    /**
     * The same without an entry; one at least stays.
     *
     * @param entry its number, from 1
     */
    public Optional<ModelText> without(int entry) {
        return place(entry).filter(place -> place.list().getValue().size() > 1).flatMap(place -> {
            TextTree tree = place.tree();
            if (!TextTree.isFlow(place.list())) {
                return put(tree.lineStart(place.start()), tree.nextLine(place.end()), "");
            }
            List<Node> all = place.list().getValue();
            return place.index() + 1 < all.size()
                    ? put(place.start(), tree.start(all.get(place.index() + 1)), "")
                    : put(tree.end(all.get(place.index() - 1)), place.end(), "");
        });
    }

    private Optional<ModelText> put(int from, int to, String letters) {
        String changed = text.text().substring(0, from) + letters + text.text().substring(to);
        return TextTree.of(changed).map(tree -> new ModelText(changed));
    }
}
