package throwline.window.session;

import java.util.Optional;
import java.util.function.Supplier;
import throwline.input.GivenName;
import throwline.words.Message;

/** The list of sticks of a session; every change is one step back. */
public final class StickEdits {

    private final Session session;
    private final Supplier<GroupEdits> edits;

    StickEdits(Session session, Supplier<GroupEdits> edits) {
        this.session = session;
        this.edits = edits;
    }

    /** Adds a stick that pulls. */
    public Optional<String> add(String name) {
        return taken(name).or(() -> session.apply(edits.get().added(name)));
    }

    /** Adds a stick that rolls. */
    public Optional<String> addRoll(String name) {
        return taken(name).or(() -> session.apply(edits.get().addedRoll(name)));
    }

    private Optional<String> taken(String name) {
        boolean taken =
                session.model().sticks().stream().anyMatch(each -> each.name().equalsIgnoreCase(name.strip()));
        return taken
                ? Optional.of(session.say(Message.of("window.stick.taken", name.strip())))
                : GivenName.wrong(name, "full up").map(session::say);
    }

    /** Adds a copy of a stick. */
    public Optional<String> copy(String of, String name) {
        return taken(name).or(() -> session.apply(edits.get().copied(of, name)));
    }

    /** Gives a stick another name. */
    public Optional<String> rename(String old, String name) {
        return taken(name).or(() -> session.apply(edits.get().renamed(old, name)));
    }

    /** Removes a stick. */
    public Optional<String> remove(String name) {
        return session.apply(edits.get().removed(name));
    }

    /** Moves a stick one place in the list. */
    public Optional<String> move(String name, boolean down) {
        return session.apply(edits.get().moved(name, down));
    }
}
