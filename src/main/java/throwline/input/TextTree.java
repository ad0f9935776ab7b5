package throwline.input;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A text of a model file as nodes that know where in the text they stand, in characters.
 *
 * @param text the text
 * @param root its node
 */
record TextTree(String text, Node root) {

    /** The tree; empty where the text is not well formed. */
    static Optional<TextTree> of(String text) {
        LoadSettings settings = LoadSettings.builder().setUseMarks(true).build();
        try {
            return new Compose(settings).composeString(text).map(root -> new TextTree(text, root));
        } catch (YamlEngineException e) {
            return Optional.empty();
        }
    }

    /** What stands at a path: names of keys, and {@code [3]} for the third entry of a list. */
    Optional<Node> find(List<String> path) {
        Optional<Node> node = Optional.of(root);
        for (String step : path) {
            node = node.flatMap(parent -> child(parent, step));
        }
        return node;
    }

    private static Optional<Node> child(Node parent, String step) {
        if (parent instanceof SequenceNode list && step.matches("\\[\\d{1,4}\\]")) {
            int entry = Integer.parseInt(step.substring(1, step.length() - 1));
            return entry >= 1 && entry <= list.getValue().size()
                    ? Optional.of(list.getValue().get(entry - 1))
                    : Optional.empty();
        }
        return tuple(parent, step).map(NodeTuple::getValueNode);
    }

    /** The entry of a mapping with this key; case, blanks and hyphens do not count. */
    static Optional<NodeTuple> tuple(Node parent, String key) {
        int index = index(parent, key);
        return index < 0
                ? Optional.empty()
                : Optional.of(((MappingNode) parent).getValue().get(index));
    }

    /** Place of an entry in its mapping, counted from 0; below zero where there is none. */
    static int index(Node parent, String key) {
        if (parent instanceof MappingNode mapping) {
            for (int i = 0; i < mapping.getValue().size(); i++) {
                String name = name(mapping.getValue().get(i));
                if (NearestName.key(name).equals(NearestName.key(key))) {
                    return i;
                }
            }
        }
        return -1;
    }

    static String name(NodeTuple entry) {
        return entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
    }

    static boolean isFlow(Node node) {
        return node instanceof CollectionNode<?> collection && collection.getFlowStyle() == FlowStyle.FLOW;
    }

    /** True where nothing stands behind a colon. */
    boolean isEmpty(Node node) {
        return node instanceof ScalarNode && start(node) == end(node);
    }

    int start(Node node) {
        return at(node.getStartMark());
    }

    /** Behind its last letter or brace; what follows, a comment too, is not its own. */
    int end(Node node) {
        if (node instanceof CollectionNode<?> && !isFlow(node)) {
            if (node instanceof MappingNode mapping && !mapping.getValue().isEmpty()) {
                List<NodeTuple> entries = mapping.getValue();
                return end(entries.get(entries.size() - 1).getValueNode());
            }
            if (node instanceof SequenceNode list && !list.getValue().isEmpty()) {
                return end(list.getValue().get(list.getValue().size() - 1));
            }
            return start(node);
        }
        return at(node.getEndMark());
    }

    /** The letters of a node. */
    String letters(Node node) {
        return text.substring(start(node), end(node));
    }

    /** Where the line of a place begins. */
    int lineStart(int place) {
        return text.lastIndexOf('\n', place - 1) + 1;
    }

    /** Where the line after that of a place begins, or the end of the text. */
    int nextLine(int place) {
        int end = text.indexOf('\n', place);
        return end < 0 ? text.length() : end + 1;
    }

    /** Where an entry of a block begins: its line, or the first of the lines of comment that stand right above it. */
    int entryStart(NodeTuple entry) {
        int start = lineStart(start(entry.getKeyNode()));
        while (start > 0 && text.substring(lineStart(start - 1), start).strip().startsWith("#")) {
            start = lineStart(start - 1);
        }
        return start;
    }

    /** True where an entry of a block has its lines to itself. */
    boolean hasOwnLines(NodeTuple entry) {
        int start = start(entry.getKeyNode());
        return text.substring(lineStart(start), start).isBlank();
    }

    /** How lines of this text end. */
    String lineEnd() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    private int at(Optional<Mark> mark) {
        return text.offsetByCodePoints(0, mark.orElseThrow().getIndex());
    }
}
