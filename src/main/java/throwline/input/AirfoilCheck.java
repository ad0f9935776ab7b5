package throwline.input;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.words.Message;

/** Looks up every airfoil that a file names. */
final class AirfoilCheck {

    private final AirfoilLibrary library;
    private final Problems problems;
    private final Set<Message> notes = new LinkedHashSet<>();

    AirfoilCheck(AirfoilLibrary library, Problems problems) {
        this.library = library;
        this.problems = problems;
    }

    void check(Branch root) {
        for (Branch section : root.child("wing").child("sections").children()) {
            check(section, "airfoil");
        }
        check(root.child("tail"), "airfoil");
    }

    /** What the owner should know of the airfoils found. */
    List<Message> notes() {
        return List.copyOf(notes);
    }

    private void check(Branch owner, String key) {
        Branch where = owner.child(key);
        Optional<String> text = where.value(String.class);
        Optional<Airfoil> found = text.map(AirfoilName::new).flatMap(library::find);
        found.flatMap(Airfoil::likeness)
                .ifPresent(like -> notes.add(Message.of(like.note(), text.orElse(""), like.donor())));
        if (found.isPresent() && library instanceof NamedAirfoils named) {
            named.elsewhere(new AirfoilName(text.orElse("")))
                    .ifPresent(file -> notes.add(Message.of("note.airfoil.file", text.orElse(""), file.toString())));
        }
        if (text.isEmpty() || found.isPresent()) {
            return;
        }
        List<Problem> inFiles =
                library instanceof NamedAirfoils named ? named.problems(new AirfoilName(text.get())) : List.of();
        if (!inFiles.isEmpty()) {
            problems.addAll(inFiles);
            return;
        }
        NearestName.of(text.get(), library.names())
                .ifPresentOrElse(
                        near -> problems.add(where, "input.airfoil.near", text.get(), near),
                        () -> problems.add(where, "input.airfoil", text.get()));
    }
}
