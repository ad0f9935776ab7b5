package throwline.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Unmodifiable copies that keep the order of the model file, which every list a person reads follows. */
public final class FileOrder {

    private FileOrder() {}

    /** The entries of a map in its order. */
    public static <K, V> Map<K, V> copyOf(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
