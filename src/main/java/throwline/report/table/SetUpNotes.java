package throwline.report.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import throwline.report.Sentences;
import throwline.study.SetUpResult;
import throwline.words.Message;
import throwline.words.Words;

/** Notes of set-ups; one that holds for several names them all. */
public final class SetUpNotes {

    private static final Set<String> FIRST = Set.of("note.unstable", "note.hardly-stable", "note.servo.overpowered");

    private final Words words;
    private final Sentences sentences;

    /** Notes in these words. */
    public SetUpNotes(Words words, Sentences sentences) {
        this.words = words;
        this.sentences = sentences;
    }

    /** What forbids a flight, and is told before anything else. */
    public List<String> first(List<SetUpResult> setUps) {
        return lines(setUps, note -> FIRST.contains(note.code()));
    }

    /** The rest. */
    public List<String> others(List<SetUpResult> setUps) {
        return lines(setUps, note -> !FIRST.contains(note.code()));
    }

    /** All of them. */
    public List<String> of(List<SetUpResult> setUps) {
        return lines(setUps, note -> true);
    }

    /** A sentence a note, behind the names of its set-ups. */
    private List<String> lines(List<SetUpResult> setUps, Predicate<Message> wanted) {
        Map<String, List<String>> byNote = new LinkedHashMap<>();
        for (SetUpResult result : setUps) {
            result.notes().stream()
                    .filter(wanted)
                    .forEach(note -> byNote.computeIfAbsent(sentences.say(note), n -> new ArrayList<>())
                            .add(result.setUp().name()));
        }
        List<String> lines = new ArrayList<>();
        byNote.forEach((note, names) -> {
            String who = names.size() == setUps.size() ? words.say("row.all-setups") : String.join(", ", names);
            lines.add(who + ": " + note);
        });
        return lines;
    }
}
