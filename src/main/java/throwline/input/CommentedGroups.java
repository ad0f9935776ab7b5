package throwline.input;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.words.Message;

/**
 * Lines that were taken out of their comment while the group that they belong to was left in it. Such a line would be read as
 * part of the group before it, or as a value that goes on.
 */
final class CommentedGroups {

    /** A group whose line is commented out: its name behind the number sign, nothing behind its colon. */
    private static final Pattern OFF = Pattern.compile("( *)#([^\\s#:][^:]{0,60}):\\s*(#.*)?");

    private static final Pattern ON = Pattern.compile("( *)[^\\s#].*");

    private final Set<String> groups;
    private final Deque<Level> levels = new ArrayDeque<>();

    /**
     * @param table the keys: a comment is taken for a group only where one of its groups has that name
     */
    CommentedGroups(KeyTable table) {
        groups = table.all().stream()
                .filter(key -> !key.children().isEmpty())
                .map(KeyRow::name)
                .collect(Collectors.toCollection(HashSet::new));
    }

    /**
     * A line that others are indented below.
     *
     * @param indent blanks before it
     * @param line counted from 1
     * @param name of the group that is commented out; empty for a line that counts
     */
    private record Level(int indent, int line, String name) {}

    /**
     * Looks through a file.
     *
     * @param text the file
     * @throws UnreadableFile naming the lines above the first such line that must be taken out of their comment too
     */
    void check(String text) throws UnreadableFile {
        int number = 0;
        for (String line : SyntaxFault.lines(text)) {
            number++;
            Matcher off = OFF.matcher(line);
            Matcher on = ON.matcher(line);
            if (off.matches()) {
                open(new Level(off.group(1).length(), number, off.group(2)));
            } else if (on.matches()) {
                Level here = new Level(on.group(1).length(), number, "");
                open(here);
                above(here);
            }
        }
    }

    private void open(Level level) {
        while (!levels.isEmpty() && levels.peek().indent() >= level.indent()) {
            levels.pop();
        }
        levels.push(level);
    }

    private void above(Level here) throws UnreadableFile {
        Deque<Level> off = new ArrayDeque<>();
        Iterator<Level> outwards = levels.iterator();
        outwards.next();
        while (outwards.hasNext()) {
            Level level = outwards.next();
            if (level.name().isEmpty()) {
                break;
            }
            off.push(level);
        }
        if (off.stream().noneMatch(level -> groups.contains(level.name()))) {
            return;
        }
        FilePlace place = new FilePlace(here.line(), here.indent() + 1);
        Object[] said = off.stream()
                .flatMap(level -> Stream.of(level.name(), String.valueOf(level.line())))
                .toArray();
        throw new UnreadableFile(place, Message.of(off.size() == 1 ? "input.commented" : "input.commented.two", said));
    }
}
