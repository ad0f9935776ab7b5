package throwline.window.session;

import java.util.Optional;
import throwline.input.ModelText;
import throwline.model.SetUp;
import throwline.words.Words;

/** The list of set-ups of a session; every change is one step back. */
public final class SetUpEdits {

    private final Session session;
    private final Hand hand;
    private final Words words;

    SetUpEdits(Session session, Hand hand, Words words) {
        this.session = session;
        this.hand = hand;
        this.words = words;
    }

    /** Adds a set-up that moves nothing, and takes it. */
    public Optional<String> add(String name) {
        return named(edits().added(name), name);
    }

    /** Adds a copy of the set-up at hand, and takes it. */
    public Optional<String> copy(String name) {
        return named(edits().copied(hand.name(), name), name);
    }

    /** Gives the set-up at hand another name. */
    public Optional<String> rename(String name) {
        Optional<String> wrong = taken(name, hand.name());
        if (wrong.isPresent()) {
            return wrong;
        }
        String old = hand.name();
        Optional<ModelText> renamed = edits().renamed(old, name);
        hand.renamed(name);
        Optional<String> refused = session.apply(renamed);
        if (refused.isPresent()) {
            hand.renamed(old);
        }
        return refused;
    }

    /** Removes the set-up at hand. */
    public Optional<String> remove() {
        return session.apply(edits().removed(hand.name()));
    }

    /** Moves the set-up at hand one place in the list; nothing at its end. */
    public Optional<String> move(boolean down) {
        int index = session.model().setUps().indexOf(hand.written(session.model()));
        boolean atEnd = index == (down ? session.model().setUps().size() - 1 : 0);
        return atEnd ? Optional.empty() : session.apply(edits().moved(hand.name(), down));
    }

    private GroupEdits edits() {
        return session.edits(GroupEdits.Group.SET_UPS);
    }

    private Optional<String> named(Optional<ModelText> changed, String name) {
        Optional<String> refused = taken(name, "").or(() -> session.apply(changed));
        if (refused.isEmpty()) {
            session.take(session.model().setUps().stream()
                    .map(SetUp::name)
                    .filter(each -> each.equalsIgnoreCase(name.strip()))
                    .findFirst()
                    .orElse(hand.name()));
        }
        return refused;
    }

    private Optional<String> taken(String name, String except) {
        boolean taken = session.model().setUps().stream()
                .anyMatch(each -> each.name().equalsIgnoreCase(name.strip())
                        && !each.name().equals(except));
        return taken ? Optional.of(words.say("window.name.taken", name.strip())) : Optional.empty();
    }
}
