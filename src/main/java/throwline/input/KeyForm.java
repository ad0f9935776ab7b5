package throwline.input;

import java.util.ArrayList;
import java.util.List;

/** The table of keys laid over the text of a model file: every value that stands in it or could, in the order of the table. */
public final class KeyForm {

    /** More entries of one list than any model has. */
    private static final int MOST = 60;

    private final ModelText text;
    private final List<Field> fields = new ArrayList<>();

    private KeyForm(ModelText text) {
        this.text = text;
    }

    /**
     * A value of the file.
     *
     * @param path its place, as {@link ModelText} takes it
     * @param row its row in the table of keys, such as {@code wing.sections[].chord} or {@code packs.*.weight}
     * @param place its place, as problems name it
     * @param written what stands there; empty where nothing does
     * @param needed true where something must
     * @param fallback what is taken where nothing does; may be empty
     * @param limits least and most; may be empty
     * @param choices words that are allowed; empty where others are
     * @param example how it may be written
     * @param meaning what it is and what it is measured from
     * @param reason why this is taken; may be empty
     */
    public record Field(
            List<String> path,
            String row,
            String place,
            String written,
            boolean needed,
            String fallback,
            String limits,
            List<String> choices,
            String example,
            String meaning,
            String reason) {
        public Field {
            path = List.copyOf(path);
            choices = List.copyOf(choices);
        }
    }

    /** The fields of a text; none where it is not well formed. */
    public static List<Field> of(ModelText text) {
        KeyForm form = new KeyForm(text);
        form.below(KeyTable.load().root(), List.of(), "");
        return List.copyOf(form.fields);
    }

    private void below(KeyRow key, List<String> path, String place) {
        for (KeyRow child : key.fixedChildren()) {
            if (!child.name().equals(KeyRow.ANY_ENTRY)) {
                at(child, with(path, child.name()), place.isEmpty() ? child.name() : place + "." + child.name());
            }
        }
        key.anyChild()
                .ifPresent(any -> text.names(path).stream()
                        .filter(name -> key.child(name)
                                .filter(k -> !k.name().equals(KeyRow.ANY_NAME))
                                .isEmpty())
                        .forEach(name -> at(any, with(path, name), place + "." + name)));
        key.children().stream()
                .filter(child -> child.name().equals(KeyRow.ANY_ENTRY))
                .forEach(child -> entries(child, path, place));
    }

    private void entries(KeyRow child, List<String> path, String place) {
        for (int i = 1; i <= MOST && text.at(with(path, "[" + i + "]")).isPresent(); i++) {
            at(child, with(path, "[" + i + "]"), place + "[" + i + "]");
        }
    }

    private void at(KeyRow key, List<String> path, String place) {
        boolean inside = !key.children().isEmpty() && isGroup(key);
        if (inside) {
            below(key, path, place);
        } else {
            fields.add(field(key, path, place));
        }
    }

    private static boolean isGroup(KeyRow key) {
        return switch (key.kind()) {
            case GROUP, NAMED, LIST -> true;
            default -> false;
        };
    }

    private Field field(KeyRow key, List<String> path, String place) {
        return new Field(
                path,
                key.path().replace("." + KeyRow.ANY_ENTRY, KeyRow.ANY_ENTRY),
                place,
                text.at(path).orElse(""),
                key.need() == KeyRow.Need.REQUIRED,
                key.need() == KeyRow.Need.DEFAULT ? key.needText() : "",
                key.range().map(r -> r.leastText() + " .. " + r.mostText()).orElse(""),
                key.choices(),
                key.example(),
                key.meaning(),
                key.reason());
    }

    private static List<String> with(List<String> path, String step) {
        List<String> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }
}
