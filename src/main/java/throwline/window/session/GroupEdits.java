package throwline.window.session;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.input.ModelText;
import throwline.model.Model;
import throwline.model.Stick;
import throwline.model.Surface;

/** Changes of the lists of set-ups and of sticks in a model file. */
final class GroupEdits {

    /** Lists of named entries. */
    enum Group {
        /** Where the surfaces stand. */
        SET_UPS("set-ups"),
        /** What full stick adds. */
        STICKS("sticks");

        private final String key;

        Group(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    private final ModelText text;
    private final Model model;
    private final Group group;

    GroupEdits(ModelText text, Model model, Group group) {
        this.text = text;
        this.model = model;
        this.group = group;
    }

    /** A new entry; a stick begins as up elevator of a third of its travel, which its owner then changes. */
    Optional<ModelText> added(String name) {
        double pull =
                Math.max(1, Math.floor(Math.toDegrees(model.tail().elevator().travelUp()) / 2));
        String value = group == Group.SET_UPS ? "{}" : "{does: pull, elevator: " + (int) pull + " deg up}";
        return text.with(path(name), value);
    }

    /** A new stick that rolls by half of what the outermost surface can do up. */
    Optional<ModelText> addedRoll(String name) {
        return model.wing().surfaces().stream()
                .max(java.util.Comparator.comparingDouble(Surface::to))
                .flatMap(outer -> {
                    int up = (int) Math.max(1, Math.floor(Math.toDegrees(outer.travelUp()) / 2));
                    int down = (int) Math.max(1, Math.floor(Math.toDegrees(outer.travelDown()) / 2));
                    return text.with(
                            path(name),
                            "{does: roll, " + ModelText.plain(outer.name()) + ": {up: " + up + " deg, down: " + down
                                    + " deg}}");
                });
    }

    Optional<ModelText> copied(String of, String name) {
        return text.copied(path(of), name);
    }

    /** Sticks that work in a set-up of the old name go with it. */
    Optional<ModelText> renamed(String old, String name) {
        Optional<ModelText> renamed = text.renamed(path(old), name);
        if (group == Group.STICKS) {
            return renamed;
        }
        for (Stick stick : model.sticks()) {
            if (stick.in().contains(old)) {
                List<String> in = stick.in().stream()
                        .map(each -> each.equals(old) ? name : each)
                        .toList();
                renamed = renamed.flatMap(changed -> in(changed, stick, in));
            }
        }
        return renamed;
    }

    Optional<ModelText> removed(String name) {
        Optional<ModelText> removed = text.without(path(name));
        if (group == Group.STICKS) {
            return removed;
        }
        for (Stick stick : model.sticks()) {
            List<String> in =
                    stick.in().stream().filter(each -> !each.equals(name)).toList();
            if (stick.in().size() > in.size() && !in.isEmpty()) {
                removed = removed.flatMap(changed -> in(changed, stick, in));
            }
        }
        return removed;
    }

    /** One place up or down in the list. */
    Optional<ModelText> moved(String name, boolean down) {
        List<String> names = text.names(List.of(group.key()));
        int index = names.indexOf(name) - (down ? 0 : 1);
        return index < 0 ? Optional.empty() : text.swapped(path(names.get(index)));
    }

    private static Optional<ModelText> in(ModelText text, Stick stick, List<String> setUps) {
        String list = setUps.stream().map(ModelText::plain).collect(Collectors.joining(", ", "[", "]"));
        return text.with(List.of(Group.STICKS.key(), stick.name(), "in"), list);
    }

    private List<String> path(String name) {
        return List.of(group.key(), name);
    }
}
