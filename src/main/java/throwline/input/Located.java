package throwline.input;

import java.util.List;

/** A file as a tree in which everything knows its place. */
sealed interface Located permits Located.Scalar, Located.Mapping, Located.Sequence {

    /** Where it begins. */
    FilePlace place();

    /**
     * One piece of text.
     *
     * @param text without quotes
     * @param plain true where it stood without quotes
     * @param cutShort true where a number sign follows that may belong to it
     * @param place where it begins
     */
    record Scalar(String text, boolean plain, boolean cutShort, FilePlace place) implements Located {

        /** True where nothing was written. */
        boolean isEmpty() {
            return plain && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }
    }

    /**
     * Keys and values in the order of the file; a key may stand twice.
     *
     * @param entries in order
     * @param place where it begins
     */
    record Mapping(List<Entry> entries, FilePlace place) implements Located {
        public Mapping {
            entries = List.copyOf(entries);
        }
    }

    /**
     * A list.
     *
     * @param items in order
     * @param place where it begins
     */
    record Sequence(List<Located> items, FilePlace place) implements Located {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /**
     * A key and its value.
     *
     * @param key as written
     * @param value what it holds
     */
    record Entry(Scalar key, Located value) {}
}
