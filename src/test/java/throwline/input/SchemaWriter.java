package throwline.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import throwline.units.Dimension;
import throwline.units.Unit;

/** Makes the published JSON Schema from the table of keys, as nested maps and lists. */
final class SchemaWriter {

    private static final String NUMBER = "[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)";
    private static final String DEFLECTION_SIZE = "(" + NUMBER + " ?" + units(Dimension.ANGLE) + "|" + lengths() + ")";
    private static final String DEFLECTION = "^(" + DEFLECTION_SIZE + "( ?(up|down))?|[+-]?0+)$";

    private SchemaWriter() {}

    static Map<String, Object> schema(KeyTable table) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "http://json-schema.org/draft-07/schema#");
        schema.put("$id", "throwline-model-" + ModelFile.VERSION + ".schema.json");
        schema.put("title", "Throwline model file, version " + ModelFile.VERSION);
        schema.putAll(group(table.root()));
        return schema;
    }

    private static Map<String, Object> of(KeyRow key) {
        Map<String, Object> schema = new LinkedHashMap<>();
        if (!key.meaning().isEmpty()) {
            schema.put("description", describe(key));
        }
        schema.putAll(
                switch (key.kind()) {
                    case GROUP, NAMED -> key.need() == KeyRow.Need.OR_NONE ? orNone(group(key)) : group(key);
                    case LIST -> list(key);
                    case TEXT, AIRFOIL -> Map.of("type", List.of("string", "number"));
                    case NAMES -> names();
                    case VERSION -> Map.of("const", ModelFile.VERSION);
                    case COUNT -> count(key);
                    case CHOICE -> Map.of("enum", key.choices());
                    case DEFLECTION -> deflection();
                    case THROWS, THROW -> anyOf(deflection(), both());
                    case QUANTITY -> pattern(quantity(key.dimension().orElseThrow()));
                });
        if (key.need() == KeyRow.Need.DEFAULT) {
            schema.put("default", key.kind() == KeyRow.Kind.COUNT ? Integer.valueOf(key.needText()) : key.needText());
        }
        return schema;
    }

    private static String describe(KeyRow key) {
        String range = key.range()
                .map(r -> " " + r.leastText() + " to " + r.mostText() + ".")
                .orElse("");
        String example = key.example().isEmpty() ? "" : " Example: " + key.example();
        return key.meaning() + range + example;
    }

    private static Map<String, Object> group(KeyRow key) {
        Map<String, Object> schema = new LinkedHashMap<>();
        List<KeyRow> fixed = key.fixedChildren();
        List<String> required = fixed.stream()
                .filter(k -> k.need() == KeyRow.Need.REQUIRED)
                .map(KeyRow::name)
                .toList();
        schema.put(
                "type",
                required.isEmpty() && key.need() != KeyRow.Need.REQUIRED ? List.of("object", "null") : "object");
        if (!fixed.isEmpty()) {
            schema.put("properties", properties(fixed));
        }
        schema.put(
                "additionalProperties",
                key.anyChild().<Object>map(SchemaWriter::of).orElse(false));
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        List<Object> either = new ArrayList<>();
        for (KeyRow child : fixed) {
            if (child.need() == KeyRow.Need.REQUIRED_UNLESS) {
                either.add(Map.of("required", List.of(child.name())));
                either.add(Map.of("required", List.of(child.needText())));
            }
        }
        if (!either.isEmpty()) {
            schema.put("anyOf", either);
        }
        if (key.need() == KeyRow.Need.REQUIRED && key.kind() == KeyRow.Kind.NAMED) {
            schema.put("minProperties", key.name().equals("set-ups") ? 2 : 1);
        }
        return schema;
    }

    private static Map<String, Object> properties(List<KeyRow> keys) {
        Map<String, Object> properties = new LinkedHashMap<>();
        keys.forEach(key -> properties.put(key.name(), of(key)));
        return properties;
    }

    private static Map<String, Object> list(KeyRow key) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "array");
        schema.put("minItems", 2);
        schema.put("items", group(key.children().get(0)));
        return schema;
    }

    private static Map<String, Object> names() {
        Map<String, Object> name = Map.of("type", List.of("string", "number"));
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("type", "array");
        list.put("items", name);
        return anyOf(name, list);
    }

    private static Map<String, Object> count(KeyRow key) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "integer");
        key.range().ifPresent(r -> {
            schema.put("minimum", (int) r.least());
            schema.put("maximum", (int) r.most());
        });
        return schema;
    }

    private static Map<String, Object> deflection() {
        Map<String, Object> zero = Map.of("const", 0);
        return anyOf(pattern(DEFLECTION), zero);
    }

    private static Map<String, Object> both() {
        Map<String, Object> sides = new LinkedHashMap<>();
        sides.put("up", deflection());
        sides.put("down", deflection());
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", sides);
        schema.put("additionalProperties", false);
        schema.put("required", List.of("up", "down"));
        return schema;
    }

    private static Map<String, Object> orNone(Map<String, Object> schema) {
        return anyOf(Map.of("const", "none"), schema);
    }

    private static Map<String, Object> anyOf(Object... schemas) {
        return Map.of("anyOf", List.of(schemas));
    }

    private static Map<String, Object> pattern(String pattern) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("pattern", pattern);
        return schema;
    }

    /** One number with a unit, or for lengths and weights several parts. */
    static String quantity(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "^" + lengths() + "$";
            case MASS -> "^" + parts(Dimension.MASS) + "$";
            default -> "^" + NUMBER + " ?" + units(dimension) + "$";
        };
    }

    private static String lengths() {
        return parts(Dimension.LENGTH);
    }

    private static String parts(Dimension dimension) {
        String part = " ?" + units(dimension);
        return "([+-]?([0-9]+" + part + " ?)*([0-9]+\\.?[0-9]*|\\.[0-9]+)" + part + ")";
    }

    /** Every spelling of the units, in either case. */
    private static String units(Dimension dimension) {
        return Unit.of(dimension).stream()
                .flatMap(unit -> unit.spellings().stream())
                .map(SchemaWriter::eitherCase)
                .collect(Collectors.joining("|", "(", ")"));
    }

    private static String eitherCase(String spelling) {
        StringBuilder pattern = new StringBuilder();
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            if (Character.isLetter(c)) {
                pattern.append('[')
                        .append(Character.toLowerCase(c))
                        .append(Character.toUpperCase(c))
                        .append(']');
            } else {
                pattern.append(c == ' ' ? "[ *-]?" : String.valueOf(c));
            }
        }
        return pattern.toString();
    }
}
