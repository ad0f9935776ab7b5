package throwline.input;

import java.util.Optional;
import throwline.model.AirfoilName;
import throwline.section.AirfoilLibrary;

/** Looks up every airfoil that a file names. */
final class AirfoilCheck {

    private final AirfoilLibrary library;
    private final Problems problems;

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

    private void check(Branch owner, String key) {
        Branch where = owner.child(key);
        Optional<String> text = where.value(String.class);
        if (text.isEmpty() || library.find(new AirfoilName(text.get())).isPresent()) {
            return;
        }
        NearestName.of(text.get(), library.names())
                .ifPresentOrElse(
                        near -> problems.add(where, "input.airfoil.near", text.get(), near),
                        () -> problems.add(where, "input.airfoil", text.get()));
    }
}
