package throwline.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.model.Assumption;
import throwline.words.Note;

/**
 * Holds a located tree against the table of keys: unknown, double and missing keys, kinds, units, ranges. Fills in the
 * defaults that depend on nothing else.
 */
final class KeyCheck {

    private final KeyTable table;
    private final Problems problems;
    private final List<Assumption> assumed = new ArrayList<>();
    private final List<String> notUsedYet = new ArrayList<>();

    KeyCheck(KeyTable table, Problems problems) {
        this.table = table;
        this.problems = problems;
    }

    /** Defaults that were filled in. */
    List<Assumption> assumed() {
        return List.copyOf(assumed);
    }

    /** Paths that were read and checked, but that no answer uses yet. */
    List<String> notUsedYet() {
        return List.copyOf(notUsedYet);
    }

    /** The keys at the top, in the order of the table. */
    List<String> order() {
        return table.root().children().stream().map(Key::name).toList();
    }

    Branch check(Located file) {
        return value(table.root(), file, "", "", file.place());
    }

    private Branch value(Key key, Located node, String name, String path, Place place) {
        return switch (key.kind()) {
            case GROUP, NAMED -> group(key, node, name, path, place);
            case LIST -> list(key, node, name, path, place);
            case NAMES -> names(key, node, name, path, place);
            case THROWS, THROW ->
                node instanceof Located.Mapping both
                        ? both(key, both, name, path, place)
                        : leaf(key, node, name, path, place);
            default -> leaf(key, node, name, path, place);
        };
    }

    private Branch group(Key key, Located node, String name, String path, Place place) {
        Branch branch = Branch.empty(name, path, place);
        if (node instanceof Located.Scalar scalar && scalar.isEmpty()) {
            return filled(key, branch, List.of());
        }
        boolean mayLack = key.need() == Key.Need.OR_NONE;
        if (mayLack
                && node instanceof Located.Scalar scalar
                && NearestName.key(scalar.text()).equals("none")) {
            return branch;
        }
        if (!(node instanceof Located.Mapping mapping)) {
            String code = path.isEmpty() ? "input.root" : mayLack ? "input.group.none" : "input.group";
            problems.add(node.place(), path, Note.of(code, key.example()));
            return branch;
        }
        return filled(key, branch, mapping.entries());
    }

    private Branch filled(Key key, Branch branch, List<Located.Entry> entries) {
        Map<String, Located.Entry> first = new LinkedHashMap<>();
        for (Located.Entry entry : entries) {
            Located.Entry earlier =
                    first.putIfAbsent(NearestName.key(entry.key().text()), entry);
            if (earlier != null) {
                problems.add(
                        entry.key().place(),
                        path(branch, entry.key().text()),
                        Note.of(
                                "input.twice",
                                earlier.key().text(),
                                String.valueOf(earlier.key().place().line())));
                continue;
            }
            if (problems.isFull()) {
                return branch;
            }
            Optional<Key> child = key.child(entry.key().text()).or(key::anyChild);
            if (child.isEmpty()) {
                unknown(key, branch, entry);
            } else {
                entry(child.get(), branch, entry);
            }
        }
        for (Key child : key.fixedChildren()) {
            if (!first.containsKey(NearestName.key(child.name()))) {
                missing(child, branch, first);
            }
        }
        return branch;
    }

    private void entry(Key key, Branch branch, Located.Entry entry) {
        String name = entry.key().text();
        boolean own = key.name().equals(Key.ANY_NAME);
        String path = path(branch, own ? name.strip() : key.name());
        if (own && ValueReader.name(name, key.example()) instanceof ValueReader.Wrong wrong) {
            problems.add(entry.key().place(), path(branch, ""), wrong.note());
            return;
        }
        if (!key.used() && key.children().isEmpty()) {
            notUsedYet.add(path);
        }
        branch.add(value(
                key,
                entry.value(),
                own ? name.strip() : key.name(),
                path,
                entry.key().place()));
    }

    private void unknown(Key key, Branch branch, Located.Entry entry) {
        String written = entry.key().text();
        List<String> known = key.children().stream().map(Key::name).toList();
        String allowed = known.stream().collect(Collectors.joining(", "));
        Optional<String> near = NearestName.of(written, known);
        int colon = written.indexOf(':');
        Note note;
        if (colon > 0 && key.child(written.substring(0, colon)).isPresent()) {
            note = Note.of("input.unknown.blank", shown(written), written.replaceFirst(":", ": "));
        } else if (near.isPresent()) {
            note = Note.of("input.unknown.near", shown(written), near.get(), allowed);
        } else {
            note = elsewhere(written)
                    .map(k -> Note.of("input.unknown.elsewhere", shown(written), k.path(), allowed))
                    .orElseGet(() -> Note.of("input.unknown", shown(written), allowed));
        }
        problems.add(entry.key().place(), path(branch, shown(written)), note);
    }

    private Optional<Key> elsewhere(String written) {
        String wanted = NearestName.key(written);
        return table.all().stream()
                .filter(k -> NearestName.key(k.name()).equals(wanted))
                .findFirst();
    }

    private void missing(Key key, Branch branch, Map<String, Located.Entry> given) {
        String path = path(branch, key.name());
        switch (key.need()) {
            case REQUIRED -> problems.add(branch.place(), path, missingNote(key));
            case REQUIRED_UNLESS -> {
                if (!given.containsKey(NearestName.key(key.needText()))) {
                    problems.add(branch.place(), path, missingNote(key));
                }
            }
            case DEFAULT -> {
                assumed.add(new Assumption(path, key.needText()));
                branch.add(leaf(
                        key,
                        new Located.Scalar(key.needText(), true, branch.place()),
                        key.name(),
                        path,
                        branch.place()));
            }
            case OR_NONE -> assumed.add(new Assumption(path, "none"));
            case OPTIONAL -> {
                if (key.kind() == Key.Kind.GROUP) {
                    branch.add(filled(key, Branch.empty(key.name(), path, branch.place()), List.of()));
                }
            }
            case WORKED_OUT -> {
                return;
            }
        }
    }

    private static Note missingNote(Key key) {
        if (key.kind() == Key.Kind.VERSION) {
            return Note.of("input.version.missing");
        }
        if (key.kind() == Key.Kind.GROUP) {
            String required = key.children().stream()
                    .filter(k -> k.need() == Key.Need.REQUIRED || k.need() == Key.Need.REQUIRED_UNLESS)
                    .map(Key::name)
                    .collect(Collectors.joining(", "));
            return Note.of("input.missing.group", key.name(), key.meaning(), required);
        }
        return Note.of("input.missing", key.name(), key.meaning(), key.name() + ": " + key.example());
    }

    private Branch list(Key key, Located node, String name, String path, Place place) {
        Branch branch = Branch.empty(name, path, place);
        if (!(node instanceof Located.Sequence sequence)) {
            problems.add(node.place(), path, Note.of("input.list", key.example()));
            return branch;
        }
        Key entry = key.children().get(0);
        for (int i = 0; i < sequence.items().size() && !problems.isFull(); i++) {
            Located item = sequence.items().get(i);
            String number = String.valueOf(i + 1);
            branch.add(value(entry, item, number, path + "[" + number + "]", item.place()));
        }
        return branch;
    }

    /** One name, or a list of them. */
    private Branch names(Key key, Located node, String name, String path, Place place) {
        Branch branch = Branch.empty(name, path, place);
        List<Located> items = node instanceof Located.Sequence sequence ? sequence.items() : List.of(node);
        for (Located item : items) {
            if (item instanceof Located.Scalar scalar && !scalar.isEmpty()) {
                branch.add(Branch.of(
                        scalar.text().strip(),
                        path,
                        scalar.place(),
                        scalar.text().strip()));
            } else {
                problems.add(item.place(), path, Note.of("input.names", key.example()));
            }
        }
        return branch;
    }

    /** Throws up and down, each with its own size. */
    private Branch both(Key key, Located.Mapping mapping, String name, String path, Place place) {
        Map<String, Deflection> sides = new LinkedHashMap<>();
        boolean good = true;
        for (Located.Entry entry : mapping.entries()) {
            String side = NearestName.key(entry.key().text());
            if (!List.of("up", "down").contains(side) || sides.containsKey(side)) {
                problems.add(entry.key().place(), path, Note.of("input.throws", "{up: 25 deg, down: 18 deg}"));
                return Branch.empty(name, path, place);
            }
            Branch one = leaf(
                    key, entry.value(), side, path + "." + side, entry.value().place());
            Optional<Deflection> deflection = one.value(Deflection.class);
            if (deflection.isPresent() && deflection.get().sense() != Deflection.Sense.UNSAID) {
                problems.add(one, "input.throws.sense", "{up: 25 deg, down: 18 deg}");
            }
            good &= deflection.isPresent();
            deflection.ifPresent(d -> sides.put(side, d));
        }
        Deflection up = sides.get("up");
        Deflection down = sides.get("down");
        if (good && (up == null || down == null)) {
            problems.add(mapping.place(), path, Note.of("input.throws", "{up: 25 deg, down: 18 deg}"));
        }
        return up == null || down == null
                ? Branch.empty(name, path, place)
                : Branch.of(name, path, place, new Deflection.Both(up, down));
    }

    private Branch leaf(Key key, Located node, String name, String path, Place place) {
        Branch absent = Branch.empty(name, path, place);
        if (!(node instanceof Located.Scalar scalar)) {
            problems.add(node.place(), path, Note.of("input.scalar", key.example()));
            return absent;
        }
        if (scalar.isEmpty()) {
            problems.add(scalar.place(), path, Note.of("input.novalue", key.example()));
            return absent;
        }
        ValueReader.Outcome outcome = ValueReader.read(key, scalar.text());
        if (outcome instanceof ValueReader.Wrong wrong) {
            problems.add(scalar.place(), path, wrong.note());
            return absent;
        }
        return Branch.of(name, path, scalar.place(), ((ValueReader.Value) outcome).value());
    }

    private static String path(Branch parent, String name) {
        return parent.path().isEmpty() ? name : parent.path() + "." + name;
    }

    private static String shown(String written) {
        return written.length() > 40 ? written.substring(0, 40) + "..." : written;
    }
}
