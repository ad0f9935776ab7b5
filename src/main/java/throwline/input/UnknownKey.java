package throwline.input;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.words.Message;

/**
 * Sentence about a key that does not belong where it stands.
 *
 * @param note the sentence
 * @param meant the key that was probably meant here; empty where none is near
 */
record UnknownKey(Message note, Optional<String> meant) {

    private static final int SHOWN = 40;

    /**
     * Looks for what was meant.
     *
     * @param written the key as it stands
     * @param group the row of the group that it stands in
     * @param table all rows
     */
    static UnknownKey explain(String written, KeyRow group, KeyTable table) {
        List<String> known = group.children().stream().map(KeyRow::name).toList();
        String allowed = known.stream().collect(Collectors.joining(", "));
        int colon = written.indexOf(':');
        if (colon > 0) {
            Optional<KeyRow> glued = group.child(written.substring(0, colon));
            if (glued.isPresent()) {
                String apart = written.replaceFirst(":", ": ");
                return new UnknownKey(
                        Message.of("input.unknown.blank", shown(written), shown(apart)), glued.map(KeyRow::name));
            }
        }
        Optional<String> near = NearestName.of(written, known);
        if (near.isPresent()) {
            return new UnknownKey(Message.of("input.unknown.near", shown(written), near.get(), allowed), near);
        }
        Message note = elsewhere(written, table)
                .map(place -> Message.of("input.unknown.elsewhere", shown(written), place, allowed))
                .orElseGet(() -> Message.of("input.unknown", shown(written), allowed));
        return new UnknownKey(note, Optional.empty());
    }

    /** A key cut to what fits into a sentence. */
    static String shown(String written) {
        return written.length() > SHOWN ? written.substring(0, SHOWN) + "..." : written;
    }

    /** The group that has a key of this name. */
    private static Optional<String> elsewhere(String written, KeyTable table) {
        String wanted = NearestName.key(written);
        return table.all().stream()
                .filter(k -> k.path().contains(".") && NearestName.key(k.name()).equals(wanted))
                .map(k -> k.path().substring(0, k.path().lastIndexOf('.')).replaceAll("\\.(\\*|\\[\\])$", ""))
                .findFirst();
    }
}
