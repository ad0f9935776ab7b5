package throwline.report;

import java.util.List;
import throwline.model.Model;
import throwline.study.OutlineAir;
import throwline.words.Message;

/**
 * Findings of a look at a model file, for a person.
 *
 * @param model as read
 * @param assumed values that the file did not give
 * @param unusual what its owner should look at again
 * @param notes what else is worth knowing
 * @param outlines airfoils that the file gives by coordinates
 */
public record CheckAnswer(
        Model model, List<Assumed> assumed, List<Message> unusual, List<Message> notes, List<OutlineAir> outlines) {

    public CheckAnswer {
        outlines = List.copyOf(outlines);
        assumed = List.copyOf(assumed);
        unusual = List.copyOf(unusual);
        notes = List.copyOf(notes);
    }

    /**
     * A value that the file did not give.
     *
     * @param path where it would stand
     * @param value what was taken
     * @param reason why
     */
    public record Assumed(String path, String value, String reason) {}
}
