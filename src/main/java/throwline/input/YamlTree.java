package throwline.input;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import throwline.words.Message;

/**
 * Builds the located tree from the parser's events, without recursion. What a model file has no use for is refused:
 * aliases, second documents, keys that are not text, depth.
 */
final class YamlTree {

    /** The table of keys goes five deep. */
    static final int DEEPEST = 12;

    /** Names have at most 60 characters, quantities fewer. */
    static final int LONGEST = 500;

    private final String text;
    private final int[] characters;
    private final Deque<Open> open = new ArrayDeque<>();
    private Optional<Located> root = Optional.empty();

    private YamlTree(String text) {
        this.text = text;
        this.characters = text.codePoints().toArray();
    }

    /** A mapping or list that has not ended yet. */
    private static final class Open {
        final boolean mapping;
        final FilePlace place;
        final List<Located> parts = new ArrayList<>();

        Open(boolean mapping, FilePlace place) {
            this.mapping = mapping;
            this.place = place;
        }
    }

    static Located parse(String text) throws UnreadableFile {
        return new YamlTree(text).build();
    }

    private Located build() throws UnreadableFile {
        LoadSettings settings = LoadSettings.builder().setUseMarks(true).build();
        try {
            for (Event event : new Parse(settings).parseString(text)) {
                take(event);
            }
        } catch (MarkedYamlEngineException e) {
            throw new SyntaxFault(SyntaxFault.lines(text))
                    .describe(e.getProblemMark().or(e::getContextMark).map(YamlTree::place));
        } catch (YamlEngineException e) {
            throw new SyntaxFault(SyntaxFault.lines(text)).describe(Optional.empty());
        }
        return root.orElseThrow(() -> new UnreadableFile(FilePlace.START, Message.of("input.file.empty")));
    }

    private void take(Event event) throws UnreadableFile {
        FilePlace place = event.getStartMark().map(YamlTree::place).orElse(FilePlace.START);
        if (event instanceof AliasEvent
                || (event instanceof NodeEvent node && node.getAnchor().isPresent())) {
            throw new UnreadableFile(place, Message.of("input.yaml.alias"));
        } else if (event instanceof DocumentStartEvent && root.isPresent()) {
            throw new UnreadableFile(place, Message.of("input.yaml.second"));
        } else if (event instanceof ScalarEvent scalar) {
            refuse(scalar.getValue(), place);
            add(new Located.Scalar(scalar.getValue(), scalar.isPlain(), cutShort(scalar), place));
        } else if (event instanceof MappingStartEvent || event instanceof SequenceStartEvent) {
            if (open.size() >= DEEPEST) {
                throw new UnreadableFile(place, Message.of("input.yaml.deep"));
            }
            refuseAsKey(place);
            open.push(new Open(event instanceof MappingStartEvent, place));
        } else if (event instanceof MappingEndEvent || event instanceof SequenceEndEvent) {
            add(close(open.pop()));
        }
    }

    /** Quotes may hold what no file holds, written as escapes. */
    private static void refuse(String value, FilePlace place) throws UnreadableFile {
        if (value.length() > LONGEST) {
            throw new UnreadableFile(place, Message.of("input.yaml.long", String.valueOf(LONGEST)));
        }
        if (OddCharacter.in(value).isPresent()) {
            throw new UnreadableFile(place, Message.of("input.file.control"));
        }
    }

    private void refuseAsKey(FilePlace place) throws UnreadableFile {
        Open parent = open.peek();
        if (parent != null && parent.mapping && parent.parts.size() % 2 == 0) {
            throw new UnreadableFile(place, Message.of("input.yaml.key"));
        }
    }

    private void add(Located part) {
        Open parent = open.peek();
        if (parent == null) {
            root = Optional.of(part);
        } else {
            parent.parts.add(part);
        }
    }

    private static Located close(Open done) {
        if (!done.mapping) {
            return new Located.Sequence(done.parts, done.place);
        }
        List<Located.Entry> entries = new ArrayList<>();
        for (int i = 0; i + 1 < done.parts.size(); i += 2) {
            entries.add(new Located.Entry((Located.Scalar) done.parts.get(i), done.parts.get(i + 1)));
        }
        return new Located.Mapping(entries, done.place);
    }

    /** A comment begins with a number sign and, by custom, a blank; without the blank it may belong to a name. */
    private boolean cutShort(ScalarEvent scalar) {
        if (!scalar.isPlain() || scalar.getEndMark().isEmpty()) {
            return false;
        }
        int at = scalar.getEndMark().get().getIndex();
        while (at < characters.length && (characters[at] == ' ' || characters[at] == '\t')) {
            at++;
        }
        return at + 1 < characters.length
                && characters[at] == '#'
                && characters[at + 1] != '#'
                && !Character.isWhitespace(characters[at + 1]);
    }

    private static FilePlace place(Mark mark) {
        return new FilePlace(mark.getLine() + 1, mark.getColumn() + 1);
    }
}
