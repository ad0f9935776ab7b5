package throwline.input;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * Place where an entry of a group can be added to the text of a file: before the brace that closes the group, or on a
 * line of its own behind its last entry.
 *
 * @param inBraces true before a brace
 * @param at index in the text, in characters
 * @param indent blanks before an entry on a line of its own
 * @param filled true where the group has entries already
 * @param within true where the group is there; false where it has to be made, at the top of the file
 */
record InsertPlace(boolean inBraces, int at, int indent, boolean filled, boolean within) {

    private static final String STEP = "  ";

    /** The place; empty where there is none. */
    static Optional<InsertPlace> find(String text, String group) {
        return new LineCursor(text, group).go();
    }

    /** The text with an entry put in; a comment only where the rest of the line is free. */
    String insert(String text, String group, String entry, String comment) {
        String newLine = text.contains("\r\n") ? "\r\n" : "\n";
        String whole = within ? entry : group + ": {" + entry + "}";
        if (inBraces) {
            return text.substring(0, at) + (filled ? ", " : "") + whole + text.substring(at);
        }
        String gap = at > 0 && text.charAt(at - 1) != '\n' ? newLine : "";
        String note = comment.isEmpty() ? "" : "   # " + comment;
        String line = within
                ? " ".repeat(indent) + entry + note
                : newLine + " ".repeat(indent) + group + ":" + newLine + " ".repeat(indent) + STEP + entry + note;
        return text.substring(0, at) + gap + line + newLine + text.substring(at);
    }

    /** One walk over the events of a file. */
    private static final class LineCursor {
        private final String text;
        private final String wanted;
        private final Deque<Boolean> open = new ArrayDeque<>();
        private boolean isKey = true;
        private boolean inGroup;
        private Optional<Mark> lastEnd = Optional.empty();
        private Optional<InsertPlace> place = Optional.empty();
        private Optional<MappingStartEvent> root = Optional.empty();
        private Optional<MappingStartEvent> group = Optional.empty();
        private Optional<Mark> firstOfGroup = Optional.empty();

        LineCursor(String text, String group) {
            this.text = text;
            wanted = NearestName.key(group);
        }

        Optional<InsertPlace> go() {
            for (Event event :
                    new Parse(LoadSettings.builder().setUseMarks(true).build()).parseString(text)) {
                take(event);
                if (place.isPresent()) {
                    return place;
                }
            }
            return Optional.empty();
        }

        private void take(Event event) {
            if (event instanceof CollectionStartEvent) {
                if (open.size() == 1 && inGroup && event instanceof MappingStartEvent mapping) {
                    group = Optional.of(mapping);
                } else if (open.isEmpty() && event instanceof MappingStartEvent mapping) {
                    root = Optional.of(mapping);
                }
                open.push(event instanceof MappingStartEvent);
                isKey = true;
            } else if (event instanceof MappingEndEvent || event instanceof SequenceEndEvent) {
                closes(event);
            } else if (event instanceof ScalarEvent scalar) {
                scalar(scalar);
            }
        }

        private void scalar(ScalarEvent scalar) {
            if (open.size() == 1) {
                if (isKey) {
                    inGroup = NearestName.key(scalar.getValue()).equals(wanted);
                } else {
                    inGroup = false;
                }
                isKey = !isKey;
            } else if (open.size() == 2 && group.isPresent() && firstOfGroup.isEmpty()) {
                firstOfGroup = scalar.getStartMark();
            }
            // An empty value has no letters; the colon before it is where the line ends.
            lastEnd = scalar.getEndMark();
        }

        private void closes(Event event) {
            open.pop();
            boolean ofGroup = open.size() == 1 && group.isPresent();
            boolean ofRoot = open.isEmpty();
            if (ofGroup) {
                place = at(group.get(), event, firstOfGroup, true);
            } else if (ofRoot) {
                place = root.flatMap(r -> at(r, event, r.getStartMark(), false));
            }
            if (open.size() == 1) {
                isKey = true;
            }
            if (!(event instanceof MappingEndEvent) || isBraced(event)) {
                lastEnd = event.getEndMark().or(() -> lastEnd);
            }
        }

        private static boolean isBraced(Event event) {
            return event.getStartMark()
                    .flatMap(s -> event.getEndMark().map(e -> e.getIndex() > s.getIndex()))
                    .orElse(false);
        }

        private Optional<InsertPlace> at(MappingStartEvent start, Event end, Optional<Mark> first, boolean within) {
            if (start.isFlow()) {
                return end.getEndMark().map(e -> new InsertPlace(true, chars(e) - 1, 0, first.isPresent(), within));
            }
            return first.flatMap(f ->
                    lastEnd.map(last -> new InsertPlace(false, endOfLine(chars(last)), f.getColumn(), true, within)));
        }

        private int chars(Mark mark) {
            return text.offsetByCodePoints(0, mark.getIndex());
        }

        private int endOfLine(int from) {
            int end = text.indexOf('\n', from);
            return end < 0 ? text.length() : end + 1;
        }
    }
}
