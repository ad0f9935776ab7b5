package throwline.window.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.input.ModelText;
import throwline.model.Model;
import throwline.model.SetUp;

/** The set-up at hand: which one it is, where a hand holds its surfaces now, and how it was before it was touched. */
final class Hand {

    private String name;
    private Optional<SetUp> before = Optional.empty();
    private Map<String, Double> held = Map.of();

    /** The one of this name. */
    Hand(String name) {
        this.name = name;
    }

    /** The name of the set-up. */
    String name() {
        return name;
    }

    /** Takes another set-up. */
    void take(String other) {
        name = other;
        before = Optional.empty();
        held = Map.of();
    }

    /** The same set-up has another name now. */
    void renamed(String other) {
        name = other;
        before = before.map(s -> new SetUp(other, s.deflections(), s.elevator(), s.switchPosition()));
    }

    /** The set-up as the model has it; its first one where it has none of this name any more. */
    SetUp written(Model model) {
        return model.setUps().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElse(model.setUps().get(0));
    }

    /** The set-up as it stands under the hand. */
    SetUp now(Model model) {
        SetUp setUp = written(model);
        for (Movable each : Movable.of(model)) {
            Double angle = held.get(each.name());
            if (angle != null) {
                setUp = each.moved(setUp, each.stopped(angle));
            }
        }
        return setUp;
    }

    /** A text with a surface of it put somewhere; neutral is left out where nothing stood there. */
    Optional<ModelText> put(ModelText text, Model model, String surface, String written) {
        List<String> path = List.of("set-ups", written(model).name(), surface);
        return written.startsWith("0 ") && text.at(path).isEmpty()
                ? Optional.of(text)
                : text.with(path, ModelText.plain(written));
    }

    /** Keeps what it was before it is touched for the first time. */
    void touch(Model model) {
        if (before.isEmpty()) {
            before = Optional.of(written(model));
        }
    }

    /** Moves a surface without a word in the file yet. */
    void hold(String surface, double angle) {
        Map<String, Double> more = new LinkedHashMap<>(held);
        more.put(surface, angle);
        held = more;
    }

    /** What it holds, rad by name. */
    Map<String, Double> held() {
        return held;
    }

    /** It holds nothing any more. */
    void letGo() {
        held = Map.of();
    }

    /** How it was before it was touched. */
    Optional<SetUp> before() {
        return before;
    }

    /** What it was before no longer counts. */
    void forget() {
        before = Optional.empty();
    }

    /** Stays with a set-up that the model has. */
    void follow(List<SetUp> setUps) {
        if (setUps.stream().noneMatch(each -> each.name().equals(name))) {
            take(setUps.get(0).name());
        }
    }
}
