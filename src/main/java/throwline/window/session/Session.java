package throwline.window.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.input.ModelText;
import throwline.input.Problem;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.numerics.Interpolation;
import throwline.report.Sentences;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

/**
 * Work of a person on one open model, and what is true after it. Every action that fails gives the sentence that says
 * why, and changes nothing. For one thread, that of the window's events.
 */
public final class Session {

    /** A hand moves in steps of this, rad, and in the fine ones of a file when it is asked to. */
    static final double STEP = Math.toRadians(0.5);

    static final double FINE = Math.toRadians(0.1);

    private final Words words;
    private final Unsaved unsaved;
    private final ModelDocument document;
    private final SafeFile file;
    private final Hand hand;
    private final List<Runnable> listeners = new ArrayList<>();
    private String pack;
    private String against = "";
    private double throttle;

    /**
     * @param words the sentences
     * @param document what is open
     * @param disk where it is kept
     * @param unsaved keeps what is not saved
     */
    public Session(Words words, ModelDocument document, Disk disk, Unsaved unsaved) {
        this.words = words;
        this.document = document;
        this.unsaved = unsaved;
        file = new SafeFile(document, disk);
        Model model = document.good().model();
        hand = new Hand(
                model.setUps().get(Math.min(1, model.setUps().size() - 1)).name());
        pack = model.packs().get(0).name();
    }

    /** Tells it what to do after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** What is open. */
    public ModelDocument document() {
        return document;
    }

    /** The model that flies: the last one that could be read. */
    public Model model() {
        return document.good().model();
    }

    /** The pack that it carries. */
    public Pack pack() {
        List<Pack> packs = model().packs();
        return packs.stream().filter(p -> p.name().equals(pack)).findFirst().orElse(packs.get(0));
    }

    /** The set-up at hand, as it stands under the hand. */
    public SetUp setUp() {
        return hand.now(model());
    }

    /** Its surfaces. */
    public List<Movable> movables() {
        return Movable.of(model());
    }

    /** How it was before it was touched; empty where it was not, or where that was let go. */
    public Optional<SetUp> before() {
        return hand.before();
    }

    /** True while a surface is held. */
    public boolean isHeld() {
        return !hand.held().isEmpty();
    }

    /** The set-up that it is held against: how it was before, the one chosen, else the reference; empty where that is itself. */
    public Optional<SetUp> against() {
        if (against.isEmpty() && before().isPresent()) {
            return before();
        }
        SetUp other = model().setUps().stream()
                .filter(each -> each.name().equals(against))
                .findFirst()
                .orElse(model().reference());
        return other.name().equals(hand.name()) ? Optional.empty() : Optional.of(other);
    }

    /** True where {@link #against} is what the set-up was before it was touched. */
    public boolean isAgainstBefore() {
        return against.isEmpty() && before().isPresent();
    }

    /** Holds it against another set-up; an empty name for how it was before. */
    public void holdAgainst(String setUp) {
        against = setUp;
        changed();
    }

    /** Takes a set-up to hand. */
    public void take(String setUp) {
        hand.take(setUp);
        changed();
    }

    /** Takes another pack. */
    public void carry(String other) {
        pack = other;
        changed();
    }

    /** The throttle, 0 (closed) to 1. */
    public double throttle() {
        return throttle;
    }

    /** Opens or closes the throttle; it is no part of the file. */
    public void throttle(double duty) {
        throttle = Interpolation.clamp(duty, 0, 1);
        tell();
    }

    /**
     * Moves a surface while it is held; nothing is written.
     *
     * @param surface its name
     * @param angle where the hand is, rad, trailing edge down positive; a stop holds it
     * @param fine true for fine steps
     */
    public void drag(String surface, double angle, boolean fine) {
        hand.touch(model());
        double step = fine ? FINE : STEP;
        hand.hold(surface, Movable.of(model(), surface).stopped(step * Math.rint(angle / step)));
        tell();
    }

    /** Moves a surface by so many steps; one step back for the user. */
    public Optional<String> nudge(String surface, int steps, boolean fine) {
        Movable movable = Movable.of(model(), surface);
        drag(surface, movable.in(setUp()) + steps * (fine ? FINE : STEP), fine);
        return letGo();
    }

    /** Writes where the held surfaces stand; one step back for the user. */
    public Optional<String> letGo() {
        Optional<ModelText> text = Optional.of(document.text());
        for (Map.Entry<String, Double> each : hand.held().entrySet()) {
            text = text.flatMap(t -> hand.put(t, model(), each.getKey(), QuantityPrinter.deflection(each.getValue())));
        }
        hand.letGo();
        return apply(text);
    }

    /** Gives up where the held surfaces stand. */
    public void giveUp() {
        hand.letGo();
        changed();
    }

    /** Puts a surface where a person types it: {@code 12 mm up}, {@code 35 deg down}, {@code 80 %}. */
    public Optional<String> type(String surface, String typed) {
        Movable movable = Movable.of(model(), surface);
        TypedThrow.Outcome read = TypedThrow.read(typed, movable, movable.in(setUp()));
        if (read instanceof TypedThrow.Wrong wrong) {
            return Optional.of(say(wrong.note()));
        }
        TypedThrow.Angle angle = (TypedThrow.Angle) read;
        hand.touch(model());
        hand.letGo();
        String written = angle.written().orElse(QuantityPrinter.deflection(angle.angle()));
        return apply(hand.put(document.text(), model(), surface, written));
    }

    /** Lets go of what the set-up was before it was touched. */
    public void forgetBefore() {
        hand.forget();
        changed();
    }

    /** Puts the set-up back to what it was before it was touched. */
    public Optional<String> backToBefore() {
        SetUp then = hand.before().orElse(setUp());
        Optional<ModelText> text = Optional.of(document.text());
        for (Movable each : movables()) {
            text = text.flatMap(t -> hand.put(t, model(), each.name(), QuantityPrinter.deflection(each.in(then))));
        }
        hand.letGo();
        return apply(text);
    }

    /** The list of set-ups. */
    public SetUpEdits setUps() {
        return new SetUpEdits(this, hand, words);
    }

    GroupEdits edits(GroupEdits.Group group) {
        return new GroupEdits(document.text(), model(), group);
    }

    /** The list of sticks. */
    public StickEdits sticks() {
        return new StickEdits(this, () -> edits(GroupEdits.Group.STICKS));
    }

    /**
     * Changes one value of the model file, where the file can still be read then.
     *
     * @param path of the key
     * @param typed what stands there now; empty to leave it out
     */
    public Optional<String> set(List<String> path, String typed) {
        return apply(valued(path, typed));
    }

    /** Changes the text whatever is wrong with it then; the last good model flies on. */
    public Optional<String> setAnyhow(List<String> path, String typed) {
        Optional<ModelText> changed = valued(path, typed);
        changed.ifPresent(text -> replace(text.text()));
        return changed.isPresent() ? Optional.empty() : Optional.of(words.say("window.layout"));
    }

    private Optional<ModelText> valued(List<String> path, String typed) {
        ModelText text = document.text();
        if (!typed.isBlank()) {
            return text.with(path, ModelText.value(typed));
        }
        return text.at(path).isEmpty() ? Optional.of(text) : text.without(path);
    }

    /** Makes a change where the file can still be read after it. */
    public Optional<String> apply(Optional<ModelText> change) {
        if (change.isEmpty()) {
            changed();
            return Optional.of(words.say("window.layout"));
        }
        List<Problem> problems = document.changeIfGood(change.get());
        changed();
        return problems.stream().findFirst().map(problem -> say(problem.note()));
    }

    /** Makes it another text, whatever is wrong with it then; a step that can be taken back. */
    public void replace(String text) {
        hand.letGo();
        document.change(new ModelText(text));
        changed();
    }

    /** Takes back the last change. */
    public void undo() {
        hand.letGo();
        document.undo();
        changed();
    }

    /** Makes the last change again that was taken back. */
    public void redo() {
        hand.letGo();
        document.redo();
        changed();
    }

    /** Saves it where it came from. */
    public SafeFile.Outcome save() {
        return after(file.save());
    }

    /**
     * Saves it in another place.
     *
     * @param place the file
     * @param over true where the person has agreed to replace what is there
     */
    public SafeFile.Outcome saveAs(Path place, boolean over) {
        return after(file.saveAs(place, over));
    }

    private SafeFile.Outcome after(SafeFile.Outcome outcome) {
        changed();
        return outcome;
    }

    /**
     * What the disk has, where that is not what was read or written last.
     *
     * @param place the file
     * @param letters what is in it; empty where it is gone
     */
    public Optional<SafeFile.Other> elsewhere(Path place, String letters) {
        return file.elsewhere(place, letters);
    }

    /** Takes what another program has put on the disk. */
    public void reload(SafeFile.Other other) {
        hand.letGo();
        document.reload(new Disk.Text(other.letters()));
        changed();
    }

    /** Keeps what is here although the disk has something else; saving then replaces that. */
    public void keepMine(SafeFile.Other other) {
        document.keepMine(other.letters());
        changed();
    }

    /** Ends the session; what is unsaved and was given up is not offered again. */
    public void close() {
        unsaved.drop();
    }

    private void changed() {
        hand.follow(model().setUps());
        unsaved.follow(document);
        tell();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** A note in words, in the units of the model. */
    public String say(Message note) {
        return new Sentences(words, document.good().display()).say(note);
    }
}
