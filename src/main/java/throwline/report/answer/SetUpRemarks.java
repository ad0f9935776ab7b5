package throwline.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.study.SetUpResult;
import throwline.words.Message;

/** Notes of set-ups; one that holds for several names them all. */
final class SetUpRemarks {

    private static final Set<String> FIRST = Set.of("note.unstable", "note.hardly-stable", "note.servo.overpowered");

    private SetUpRemarks() {}

    /** What forbids a flight, and is told before anything else. */
    static List<Text> first(List<SetUpResult> setUps) {
        return lines(setUps, note -> FIRST.contains(note.code()));
    }

    /** The rest. */
    static List<Text> others(List<SetUpResult> setUps) {
        return lines(setUps, note -> !FIRST.contains(note.code()));
    }

    /** A sentence a note, behind the names of its set-ups. */
    private static List<Text> lines(List<SetUpResult> setUps, Predicate<Message> wanted) {
        Map<Message, List<String>> byNote = new LinkedHashMap<>();
        for (SetUpResult result : setUps) {
            result.notes().stream()
                    .filter(wanted)
                    .forEach(note -> byNote.computeIfAbsent(note, n -> new ArrayList<>())
                            .add(result.setUp().name()));
        }
        List<Text> lines = new ArrayList<>();
        byNote.forEach((note, names) -> lines.add(Text.say(
                "row.setup.note",
                names.size() == setUps.size() ? Text.say("row.all-setups") : Text.join(Join.COMMA, names, Text::name),
                Text.of(note))));
        return lines;
    }
}
