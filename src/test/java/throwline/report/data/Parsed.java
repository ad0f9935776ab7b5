package throwline.report.data;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.JsonSchema;

/** A part of a JSON document, read by a library of others: YAML 1.2 holds JSON. */
record Parsed(Object value) {

    static Parsed of(String json) {
        return new Parsed(new Load(LoadSettings.builder()
                        .setSchema(new JsonSchema())
                        .setAllowDuplicateKeys(false)
                        .build())
                .loadFromString(json));
    }

    Parsed at(String key) {
        return new Parsed(Objects.requireNonNull(((Map<?, ?>) value).get(key), key));
    }

    Parsed at(int index) {
        return new Parsed(((List<?>) value).get(index));
    }

    int size() {
        return ((List<?>) value).size();
    }

    List<String> keys() {
        return ((Map<?, ?>) value).keySet().stream().map(String::valueOf).toList();
    }

    String text() {
        return (String) value;
    }

    double number() {
        return ((Number) value).doubleValue();
    }
}
