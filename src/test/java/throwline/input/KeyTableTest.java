package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;

/** Table, reader and schema agree: on keys, kinds, ranges, defaults and every example, good and bad. */
class KeyTableTest {

    private static final Set<KeyRow.Kind> LEAVES = Set.of(
            KeyRow.Kind.QUANTITY,
            KeyRow.Kind.COUNT,
            KeyRow.Kind.CHOICE,
            KeyRow.Kind.DEFLECTION,
            KeyRow.Kind.VERSION,
            KeyRow.Kind.TEXT);

    private final KeyTable table = KeyTable.load();
    private final Map<String, Object> schema = SchemaWriter.schema(table);

    @TestFactory
    Stream<DynamicTest> examplesAreReadAndFitTheSchema() {
        return table.all().stream()
                .filter(k -> LEAVES.contains(k.kind()))
                .map(key -> DynamicTest.dynamicTest(key.path(), () -> {
                    assertThat(ValueReader.read(key, key.example())).isInstanceOf(ValueReader.Value.class);
                    assertThat(SchemaCheck.faults(schemaOf(key), yaml(key.example())))
                            .isEmpty();
                }));
    }

    @TestFactory
    Stream<DynamicTest> defaultsAreReadAndFitTheSchema() {
        return table.all().stream()
                .filter(k -> k.need() == KeyRow.Need.DEFAULT && k.kind() != KeyRow.Kind.AIRFOIL)
                .map(key -> DynamicTest.dynamicTest(key.path(), () -> {
                    assertThat(key.reason()).isNotEmpty();
                    assertThat(ValueReader.read(key, key.needText())).isInstanceOf(ValueReader.Value.class);
                    assertThat(SchemaCheck.faults(schemaOf(key), yaml(key.needText())))
                            .isEmpty();
                }));
    }

    @TestFactory
    Stream<DynamicTest> limitsBelongToTheRangeAndWhatLiesBeyondDoesNot() {
        return table.all().stream()
                .filter(k -> k.range().isPresent())
                .map(key -> DynamicTest.dynamicTest(key.path(), () -> {
                    KeyRow.Range range = key.range().orElseThrow();
                    Dimension dimension = key.dimension().orElse(Dimension.NUMBER);
                    assertThat(range.least()).isLessThan(range.most());
                    for (String end : List.of(range.leastText(), range.mostText())) {
                        assertThat(ValueReader.read(key, end)).isInstanceOf(ValueReader.Value.class);
                        assertThat(SchemaCheck.faults(schemaOf(key), yaml(end))).isEmpty();
                    }
                    for (String beyond : beyond(range, dimension)) {
                        assertThat(ValueReader.read(key, beyond)).isInstanceOf(ValueReader.Wrong.class);
                    }
                }));
    }

    @ParameterizedTest
    @CsvSource({
        "wing.sections[2].set back, wing.sections.[].set back",
        "wing.surfaces.my.flaps.hinge, wing.surfaces.*.hinge",
        "body.width, body.width"
    })
    void aPlaceInAFileHasItsRow(String place, String row) {
        assertThat(table.find(place)).map(KeyRow::path).contains(row);
    }

    @Test
    void whatIsWorkedOutHasAReason() {
        assertThat(table.all())
                .filteredOn(k -> k.need() == KeyRow.Need.WORKED_OUT)
                .allSatisfy(k -> assertThat(k.reason()).isNotEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void exampleFilesFitTheSchema(String name) throws Exception {
        Object file = yaml(Files.readString(Path.of("examples", name + ".yaml")));
        assertThat(SchemaCheck.faults(schema, file)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "chord: 300 mm -> chord: 300",
                "chord: 300 mm -> chord: 300 kg",
                "chord: 300 mm -> chord: '3,00 m'",
                "chord: 300 mm -> chord: 3/8 in",
                "chord: 300 mm -> chort: 300 mm",
                "chord: 300 mm -> chord: [300 mm]",
                "position: high -> position: top",
                "35 deg down -> 35 down",
                "35 deg down -> 18 grad",
                "{up: 25 deg, down: 18 deg} -> {up: 25 deg}",
                "does: roll -> does: yaw",
                "throwline: 1 -> throwline: 2",
                "arm: 800 mm, -> ",
                "clean: {} -> clean: 0",
            })
    void schemaAndReaderRefuseTheSame(String change) {
        String[] parts = change.split(" -> ?", 2);
        String base = TestFile.text("base.yaml");
        assertThat(base).contains(parts[0]);
        String changed = base.replaceFirst(Pattern.quote(parts[0]), parts[1]);
        assertThat(TestFile.read(changed, "base.yaml")).isInstanceOf(ReadModel.Faulty.class);
        assertThat(SchemaCheck.faults(schema, yaml(changed))).isNotEmpty();
        assertThat(SchemaCheck.faults(schema, yaml(base))).isEmpty();
    }

    private static List<String> beyond(KeyRow.Range range, Dimension dimension) {
        if (dimension == Dimension.NUMBER) {
            return List.of(String.valueOf((int) range.most() + 1));
        }
        double span = range.most() - range.least();
        return Stream.of(range.least() - span / 100, range.most() + span / 100)
                .map(si -> inUnitOf(range.mostText(), si, dimension))
                .toList();
    }

    /** Text of an SI value in the unit in which the table writes a limit; both are linear in each other. */
    private static String inUnitOf(String limit, double si, Dimension dimension) {
        String unit = limit.replaceFirst("^[0-9.-]+ ", "");
        double zero = si("0 " + unit, dimension);
        double one = si("1 " + unit, dimension);
        return QuantityPrinter.number((si - zero) / (one - zero), 4) + " " + unit;
    }

    private static double si(String text, Dimension dimension) {
        return ((ReadQuantity.Amount) QuantityReader.read(text, dimension))
                .quantity()
                .value();
    }

    private Map<?, ?> schemaOf(KeyRow key) {
        Map<?, ?> at = schema;
        for (String step : key.path().split("\\.", -1)) {
            if (at.get("anyOf") instanceof List<?> either && at.get("properties") == null) {
                at = (Map<?, ?>) either.get(1);
            }
            at = switch (step) {
                case KeyRow.ANY_NAME -> map(at.get("additionalProperties"));
                case KeyRow.ANY_ENTRY -> map(at.get("items"));
                default -> map(map(at.get("properties")).get(step));
            };
        }
        return at;
    }

    private static Map<?, ?> map(@Nullable Object value) {
        return (Map<?, ?>) Objects.requireNonNull(value);
    }

    private static Object yaml(String text) {
        return new Load(LoadSettings.builder().build()).loadFromString(text);
    }
}
