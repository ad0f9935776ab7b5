package throwline.input;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Assumption;
import throwline.model.Model;
import throwline.units.Display;
import throwline.words.Message;

/** Result of reading a model file. */
public sealed interface ReadModel permits ReadModel.Project, ReadModel.Faulty {

    /**
     * A model.
     *
     * @param model as read, with defaults filled in
     * @param display units that the file asks to be shown
     * @param assumed every value that the file did not give
     * @param notes what else its owner should know, such as an airfoil that stands for another
     * @param text the file as it was read
     */
    record Project(Model model, Display display, List<Assumption> assumed, List<Message> notes, String text)
            implements ReadModel {
        public Project {
            assumed = List.copyOf(assumed);
            notes = List.copyOf(notes);
        }

        /** The same with more to know. */
        Project with(List<Message> more) {
            List<Message> all = new ArrayList<>(notes);
            all.addAll(more);
            return new Project(model, display, assumed, all, text);
        }
    }

    /**
     * No model.
     *
     * @param problems all that were found, at least one, in the order of the file
     */
    record Faulty(List<Problem> problems) implements ReadModel {
        public Faulty {
            problems = List.copyOf(problems);
        }
    }
}
