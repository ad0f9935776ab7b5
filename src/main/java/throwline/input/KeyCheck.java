package throwline.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import throwline.model.Assumption;
import throwline.words.Message;

/**
 * Holds a located tree against the table of keys: unknown, double and missing keys, kinds, units, ranges. Fills in the
 * defaults that depend on nothing else.
 */
final class KeyCheck {

    private final KeyTable table;
    private final Problems problems;
    private final OutOfScope scope = new OutOfScope();
    private final ChoiceWords choiceWords = new ChoiceWords();
    private final List<Assumption> assumed = new ArrayList<>();
    private final List<Message> readAs = new ArrayList<>();

    KeyCheck(KeyTable table, Problems problems) {
        this.table = table;
        this.problems = problems;
    }

    /** Defaults that were filled in. */
    List<Assumption> assumed() {
        return List.copyOf(assumed);
    }

    /** Words of the trade that were read as a choice. */
    List<Message> readAs() {
        return List.copyOf(readAs);
    }

    /** The keys at the top, in the order of the table. */
    List<String> order() {
        return table.root().children().stream().map(KeyRow::name).toList();
    }

    Branch check(Located file) {
        return value(table.root(), file, "", "", file.place());
    }

    private Branch value(KeyRow key, Located node, String name, String path, FilePlace place) {
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

    private Branch group(KeyRow key, Located node, String name, String path, FilePlace place) {
        Branch branch = Branch.empty(name, path, place);
        if (node instanceof Located.Scalar scalar && scalar.isEmpty()) {
            return filled(key, branch, List.of());
        }
        boolean mayLack = key.need() == KeyRow.Need.OR_NONE;
        if (mayLack
                && node instanceof Located.Scalar scalar
                && NearestName.key(scalar.text()).equals("none")) {
            return branch;
        }
        if (!(node instanceof Located.Mapping mapping)) {
            Optional<Message> elsewhere =
                    node instanceof Located.Scalar scalar ? scope.value(path, scalar.text()) : Optional.empty();
            if (elsewhere.isPresent()) {
                problems.add(node.place(), path, elsewhere.get());
                return branch;
            }
            String code = path.isEmpty() ? "input.root" : mayLack ? "input.group.none" : "input.group";
            problems.add(node.place(), path, Message.of(code, key.example()));
            return branch;
        }
        return filled(key, branch, mapping.entries());
    }

    private Branch filled(KeyRow key, Branch branch, List<Located.Entry> entries) {
        Set<String> given = new HashSet<>();
        Map<String, Located.Scalar> first = new HashMap<>();
        for (int i = 0; i < entries.size() && !problems.isFull(); i++) {
            Located.Entry entry = entries.get(i);
            Located.Scalar written = entry.key();
            Located.Scalar earlier = first.putIfAbsent(NearestName.key(written.text()), written);
            if (earlier != null) {
                String line = String.valueOf(earlier.place().line());
                problems.add(
                        written.place(),
                        path(branch, UnknownKey.shown(written.text())),
                        Message.of("input.twice", UnknownKey.shown(earlier.text()), line));
            } else if (i + 1 < entries.size() && decimalComma(entry, entries.get(i + 1), branch)) {
                given.add(NearestName.key(written.text()));
                i++;
            } else {
                given.add(NearestName.key(entry(key, branch, entry, entries)));
            }
        }
        for (KeyRow child : key.fixedChildren()) {
            if (!given.contains(NearestName.key(child.name()))) {
                missing(child, branch, given);
            }
        }
        return branch;
    }

    /** A comma for a point cuts a value in two, for between braces it begins a new key. */
    private boolean decimalComma(Located.Entry entry, Located.Entry next, Branch branch) {
        boolean cut = entry.value() instanceof Located.Scalar value
                && value.plain()
                && value.text().matches("[+-]?[0-9]+")
                && next.value() instanceof Located.Scalar rest
                && rest.isEmpty()
                && next.key().plain()
                && next.key().text().matches("[0-9].*");
        if (cut) {
            String whole = ((Located.Scalar) entry.value()).text();
            String part = UnknownKey.shown(next.key().text());
            problems.add(
                    entry.value().place(),
                    path(branch, entry.key().text()),
                    Message.of("input.quantity.comma", whole + "," + part, whole + "." + part));
        }
        return cut;
    }

    /** Takes one entry; the name of the key that it was meant for. */
    private String entry(KeyRow group, Branch branch, Located.Entry entry, List<Located.Entry> siblings) {
        String written = entry.key().text().strip();
        Optional<KeyRow> child = group.child(written).or(group::anyChild);
        Optional<Message> elsewhere = scope.key(branch.path(), child.isEmpty(), entry, siblings);
        if (elsewhere.isPresent()) {
            problems.add(entry.key().place(), path(branch, UnknownKey.shown(written)), elsewhere.get());
            return written;
        }
        if (child.isEmpty()) {
            UnknownKey unknown = UnknownKey.explain(written, group, table);
            problems.add(entry.key().place(), path(branch, UnknownKey.shown(written)), unknown.note());
            return unknown.meant().orElse(written);
        }
        KeyRow key = child.get();
        boolean own = key.name().equals(KeyRow.ANY_NAME);
        String name = own ? written : key.name();
        String path = path(branch, name);
        if (own && ValueReader.name(written, "small") instanceof ValueReader.Wrong wrong) {
            problems.add(entry.key().place(), branch.path(), wrong.note());
        } else {
            branch.add(value(key, entry.value(), name, path, entry.key().place()));
        }
        return name;
    }

    private void missing(KeyRow key, Branch branch, Set<String> given) {
        String path = path(branch, key.name());
        switch (key.need()) {
            case REQUIRED -> problems.add(branch.place(), path, missingNote(key));
            case REQUIRED_UNLESS -> {
                if (!given.contains(NearestName.key(key.needText()))) {
                    problems.add(branch.place(), path, missingNote(key));
                }
            }
            case DEFAULT -> {
                assumed.add(new Assumption(path, key.needText()));
                branch.add(leaf(
                        key,
                        new Located.Scalar(key.needText(), true, false, branch.place()),
                        key.name(),
                        path,
                        branch.place()));
            }
            case OR_NONE -> assumed.add(new Assumption(path, "none"));
            case OPTIONAL -> {
                if (key.kind() == KeyRow.Kind.GROUP) {
                    branch.add(filled(key, Branch.empty(key.name(), path, branch.place()), List.of()));
                }
            }
            case WORKED_OUT -> {
                return;
            }
        }
    }

    private static Message missingNote(KeyRow key) {
        if (key.kind() == KeyRow.Kind.VERSION) {
            return Message.of("input.version.missing");
        }
        if (key.path().equals("tail")) {
            return Message.of("input.scope.no-tail");
        }
        if (key.kind() == KeyRow.Kind.GROUP) {
            String required = key.children().stream()
                    .filter(k -> k.need() == KeyRow.Need.REQUIRED || k.need() == KeyRow.Need.REQUIRED_UNLESS)
                    .map(KeyRow::name)
                    .collect(Collectors.joining(", "));
            return Message.of("input.missing.group", key.name(), key.meaning(), required);
        }
        return Message.of("input.missing", key.name(), key.meaning(), key.name() + ": " + key.example());
    }

    private Branch list(KeyRow key, Located node, String name, String path, FilePlace place) {
        Branch branch = Branch.empty(name, path, place);
        if (!(node instanceof Located.Sequence sequence)) {
            problems.add(node.place(), path, Message.of("input.list", key.example()));
            return branch;
        }
        KeyRow entry = key.children().get(0);
        for (int i = 0; i < sequence.items().size() && !problems.isFull(); i++) {
            Located item = sequence.items().get(i);
            String number = String.valueOf(i + 1);
            branch.add(value(entry, item, number, path + "[" + number + "]", item.place()));
        }
        return branch;
    }

    /** One name, or a list of them. */
    private Branch names(KeyRow key, Located node, String name, String path, FilePlace place) {
        Branch branch = Branch.empty(name, path, place);
        List<Located> items = node instanceof Located.Sequence sequence ? sequence.items() : List.of(node);
        for (Located item : items) {
            if (item instanceof Located.Scalar scalar && !scalar.isEmpty()) {
                String text = scalar.text().strip();
                branch.add(Branch.of(text, path, scalar.place(), scalar.place(), text));
            } else {
                problems.add(item.place(), path, Message.of("input.names", key.example()));
            }
        }
        return branch;
    }

    /** Throws up and down, each with its own size. */
    private Branch both(KeyRow key, Located.Mapping mapping, String name, String path, FilePlace place) {
        Map<String, WrittenDeflection> sides = new LinkedHashMap<>();
        boolean good = true;
        for (Located.Entry entry : mapping.entries()) {
            String side = NearestName.key(entry.key().text());
            if (!List.of("up", "down").contains(side) || sides.containsKey(side)) {
                problems.add(entry.key().place(), path, Message.of("input.throws", "{up: 25 deg, down: 18 deg}"));
                return Branch.empty(name, path, place);
            }
            Branch one = leaf(
                    key, entry.value(), side, path + "." + side, entry.value().place());
            Optional<WrittenDeflection> deflection = one.value(WrittenDeflection.class);
            if (deflection.isPresent() && deflection.get().sense() != WrittenDeflection.Sense.UNSAID) {
                problems.add(one, "input.throws.sense", "{up: 25 deg, down: 18 deg}");
            }
            good &= deflection.isPresent();
            deflection.ifPresent(d -> sides.put(side, d));
        }
        WrittenDeflection up = sides.get("up");
        WrittenDeflection down = sides.get("down");
        if (good && (up == null || down == null)) {
            problems.add(mapping.place(), path, Message.of("input.throws", "{up: 25 deg, down: 18 deg}"));
        }
        return up == null || down == null
                ? Branch.empty(name, path, place)
                : Branch.of(name, path, place, mapping.place(), new WrittenDeflection.Both(up, down));
    }

    private Branch leaf(KeyRow key, Located node, String name, String path, FilePlace place) {
        Branch absent = Branch.empty(name, path, place);
        if (!(node instanceof Located.Scalar scalar)) {
            problems.add(node.place(), path, Message.of("input.scalar", key.example()));
            return absent;
        }
        if (scalar.isEmpty()) {
            problems.add(scalar.place(), path, Message.of("input.novalue", key.example()));
            return absent;
        }
        if (scalar.cutShort() && (key.kind() == KeyRow.Kind.TEXT || key.kind() == KeyRow.Kind.AIRFOIL)) {
            problems.add(scalar.place(), path, Message.of("input.name.hash", UnknownKey.shown(scalar.text())));
            return absent;
        }
        Optional<String> meant = choiceWords.choice(key.path(), scalar.text());
        meant.ifPresent(choice ->
                readAs.add(Message.of("note.read-as", path, scalar.text().strip(), choice)));
        ValueReader.Outcome outcome = ValueReader.read(key, meant.orElse(scalar.text()));
        if (outcome instanceof ValueReader.Wrong wrong) {
            Message note = scope.value(path, scalar.text())
                    .or(() -> scope.arm(path, scalar.text()))
                    .orElse(wrong.note());
            problems.add(scalar.place(), path, note);
            return absent;
        }
        return Branch.of(name, path, place, scalar.place(), ((ValueReader.Value) outcome).value());
    }

    private static String path(Branch parent, String name) {
        return parent.path().isEmpty() ? name : parent.path() + "." + name;
    }
}
