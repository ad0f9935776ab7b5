package throwline;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.JsonSchema;

/** A part of a JSON document, read by a library of others: YAML 1.2 holds JSON. */
public record Parsed(Object value) {

    /** A whole document. */
    public static Parsed of(String json) {
        return new Parsed(new Load(LoadSettings.builder()
                        .setSchema(new JsonSchema())
                        .setAllowDuplicateKeys(false)
                        .build())
                .loadFromString(json));
    }

    /** The value of a key. */
    public Parsed at(String key) {
        return new Parsed(Objects.requireNonNull(((Map<?, ?>) value).get(key), key));
    }

    /** An entry of a list. */
    public Parsed at(int index) {
        return new Parsed(((List<?>) value).get(index));
    }

    /** Entries of a list. */
    public int size() {
        return ((List<?>) value).size();
    }

    /** Keys in their order. */
    public List<String> keys() {
        return ((Map<?, ?>) value).keySet().stream().map(String::valueOf).toList();
    }

    /** A text. */
    public String text() {
        return (String) value;
    }

    /** A number. */
    public double number() {
        return ((Number) value).doubleValue();
    }
}
