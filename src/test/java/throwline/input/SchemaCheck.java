package throwline.input;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Holds parsed YAML against as much of JSON Schema as the published schema uses. */
final class SchemaCheck {

    private final List<String> faults = new ArrayList<>();

    private SchemaCheck() {}

    /** Places that break the schema; empty where all is well. */
    static List<String> faults(Map<?, ?> schema, Object value) {
        SchemaCheck check = new SchemaCheck();
        check.check(schema, value, "");
        return check.faults;
    }

    private void check(Map<?, ?> schema, Object value, String path) {
        schema.forEach((word, rule) -> {
            boolean good =
                    switch (String.valueOf(word)) {
                        case "type" -> types(rule).stream().anyMatch(type -> isOf(String.valueOf(type), value));
                        case "const" -> rule.equals(value);
                        case "enum" -> ((Collection<?>) rule).contains(value);
                        case "pattern" ->
                            !(value instanceof String s)
                                    || Pattern.compile(String.valueOf(rule))
                                            .matcher(s)
                                            .find();
                        case "minimum" -> !(value instanceof Number n) || n.doubleValue() >= number(rule);
                        case "maximum" -> !(value instanceof Number n) || n.doubleValue() <= number(rule);
                        case "minItems" -> !(value instanceof List<?> l) || l.size() >= number(rule);
                        case "minProperties" -> !(value instanceof Map<?, ?> m) || m.size() >= number(rule);
                        case "required" ->
                            !(value instanceof Map<?, ?> m) || m.keySet().containsAll((Collection<?>) rule);
                        case "anyOf" ->
                            ((List<?>) rule)
                                    .stream()
                                            .anyMatch(s ->
                                                    faults((Map<?, ?>) s, value).isEmpty());
                        case "items", "properties", "additionalProperties" -> true;
                        case "description", "title", "default", "$schema", "$id" -> true;
                        default -> false;
                    };
            if (!good) {
                faults.add(path + ": " + word);
            }
        });
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> property(schema, String.valueOf(key), inner, path + "." + key));
        }
        if (value instanceof List<?> list && schema.get("items") instanceof Map<?, ?> items) {
            list.forEach(item -> check(items, item, path + "[]"));
        }
    }

    private void property(Map<?, ?> schema, String key, Object value, String path) {
        if (schema.get("properties") instanceof Map<?, ?> properties && properties.get(key) instanceof Map<?, ?> own) {
            check(own, value, path);
        } else if (schema.get("additionalProperties") instanceof Map<?, ?> any) {
            check(any, value, path);
        } else if (Boolean.FALSE.equals(schema.get("additionalProperties"))) {
            faults.add(path + ": unknown");
        }
    }

    private static Collection<?> types(Object rule) {
        return rule instanceof Collection<?> several ? several : List.of(rule);
    }

    private static boolean isOf(String type, Object value) {
        return switch (type) {
            case "object" -> value instanceof Map;
            case "array" -> value instanceof List;
            case "string" -> value instanceof String;
            case "number" -> value instanceof Number;
            case "integer" -> value instanceof Integer;
            case "null" -> value == null;
            default -> false;
        };
    }

    private static double number(Object rule) {
        return ((Number) rule).doubleValue();
    }
}
