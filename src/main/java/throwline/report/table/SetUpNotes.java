package throwline.report.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import throwline.report.Sentences;
import throwline.study.SetUpResult;
import throwline.words.Note;
import throwline.words.Words;

/** Notes of set-ups; one that holds for several names them all. */
public final class SetUpNotes {

    private final Words words;
    private final Sentences sentences;

    /** Notes in these words. */
    public SetUpNotes(Words words, Sentences sentences) {
        this.words = words;
        this.sentences = sentences;
    }

    /** A sentence a note, behind the names of its set-ups. */
    public List<String> of(List<SetUpResult> setUps) {
        Map<String, List<String>> byNote = new LinkedHashMap<>();
        for (SetUpResult result : setUps) {
            for (Note note : result.notes()) {
                byNote.computeIfAbsent(sentences.say(note), n -> new ArrayList<>())
                        .add(result.setUp().name());
            }
        }
        List<String> lines = new ArrayList<>();
        byNote.forEach((note, names) -> {
            String who = names.size() == setUps.size() ? words.say("row.all-setups") : String.join(", ", names);
            lines.add(who + ": " + note);
        });
        return lines;
    }
}
