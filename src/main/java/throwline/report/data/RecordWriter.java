package throwline.report.data;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import throwline.model.Named;
import throwline.report.Sentences;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * One JSON document made of result records: a key a component in the order of the record, angles in degrees where
 * {@link Measure} says so, the rest in SI units, constants as codes, what is empty as null, a headline number with its band
 * or the reason why there is none, what has a name by that. {@link Key} gives a component another name, leaves it out, puts
 * its own components in its place, or adds what a method works out.
 */
final class RecordWriter {

    /** Keys of an object that stands on one line. */
    private static final int MOST_ON_A_LINE = 14;

    private final JsonWriter json = new JsonWriter();
    private final Sentences sentences;
    private final Map<Class<?>, List<Entry>> entries = new HashMap<>();

    /** An empty document, with these words. */
    RecordWriter(Sentences sentences) {
        this.sentences = sentences;
    }

    /** Key of a record, how its value is read, and its unit. */
    private record Entry(Method method, @Nullable Key key, Dimension dimension) {
        static Entry of(Method method, @Nullable Key key, @Nullable Measure measure) {
            return new Entry(method, key, measure == null ? Dimension.NUMBER : measure.value());
        }

        String name() {
            return key == null ? method.getName() : key.value();
        }

        Object value(Record record) {
            try {
                Object value = Objects.requireNonNull(method.invoke(record));
                return key != null && key.nullIfEmpty() && value.equals("") ? Optional.empty() : value;
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("cannot read " + method, e);
            }
        }
    }

    /** An object whose keys the content writes. */
    void object(Runnable content) {
        json.object();
        content.run();
        json.end();
    }

    /** An array without a key, whose entries the content writes. */
    <T> void array(List<T> all, Consumer<T> content) {
        json.array();
        all.forEach(content);
        json.end();
    }

    /** A key with an array of objects whose keys the content writes. */
    <T> void objects(String key, List<T> all, Consumer<T> content) {
        json.key(key);
        array(all, one -> object(() -> content.accept(one)));
    }

    /** The same with an object a line. */
    <T> void shortObjects(String key, List<T> all, Consumer<T> content) {
        json.key(key);
        array(all, one -> {
            json.shortObject();
            content.accept(one);
            json.end();
        });
    }

    /** A key with an object whose keys the content writes; null where there is nothing to write. */
    <T> void object(String key, Optional<T> value, Consumer<T> content) {
        json.key(key);
        value.ifPresentOrElse(present -> object(() -> content.accept(present)), json::nothing);
    }

    /** A key and its value: anything that a component may be. */
    void write(String key, Object value) {
        write(key, value, Dimension.NUMBER);
    }

    /** The same with a unit of its own. */
    void write(String key, Object value, Dimension dimension) {
        json.key(key);
        value(value, dimension);
    }

    /** The components of a record as keys of the object that is open. */
    void components(Record record) {
        for (Entry entry : entries(record)) {
            Object value = entry.value(record);
            if (!entry.name().equals(Key.INLINE)) {
                write(entry.name(), value, entry.dimension());
            } else if (value instanceof HeadlineNumbers numbers) {
                numbers(numbers);
            } else {
                components((Record) value);
            }
        }
    }

    /** The document so far. */
    @Override
    public String toString() {
        return json.toString();
    }

    private List<Entry> entries(Record record) {
        return entries.computeIfAbsent(record.getClass(), RecordWriter::entries);
    }

    private static List<Entry> entries(Class<?> type) {
        Map<String, Method> behind = Arrays.stream(type.getDeclaredMethods())
                .filter(method -> method.isAnnotationPresent(Key.class))
                .filter(method -> !method.getAnnotation(Key.class).after().isEmpty())
                .collect(Collectors.toMap(
                        method -> method.getAnnotation(Key.class).after(), method -> method));
        List<Entry> entries = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            entries.add(Entry.of(
                    component.getAccessor(),
                    component.getAnnotation(Key.class),
                    component.getAnnotation(Measure.class)));
            Method next = behind.get(component.getName());
            while (next != null) {
                entries.add(Entry.of(next, next.getAnnotation(Key.class), next.getAnnotation(Measure.class)));
                next = behind.get(next.getName());
            }
        }
        entries.removeIf(entry -> entry.name().equals(Key.NONE));
        return entries;
    }

    private void value(Object value, Dimension dimension) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresentOrElse(present -> value(present, dimension), json::nothing);
        } else if (value instanceof List<?> list) {
            array(list, entry -> value(entry, dimension));
        } else if (value instanceof Headline headline) {
            headline(headline, DataUnit.of(dimension).factor());
        } else if (value instanceof Message message) {
            json.shortObject();
            json.key("code").value(message.code());
            json.key("text").value(sentences.say(message));
            json.end();
        } else if (value instanceof Quantity quantity) {
            value(quantity.value(), quantity.dimension());
        } else if (value instanceof Named named) {
            json.value(named.name());
        } else if (value instanceof Record record) {
            record(record);
        } else {
            plain(value, DataUnit.of(dimension).factor());
        }
    }

    private void record(Record record) {
        if (takesLines(record)) {
            json.object();
        } else {
            json.shortObject();
        }
        components(record);
        json.end();
    }

    /** True for a record with a list or another record in it, or too many keys for one line. */
    private boolean takesLines(Record record) {
        List<Entry> keys = entries(record);
        return keys.size() > MOST_ON_A_LINE
                || keys.stream().anyMatch(entry -> {
                    Object value = entry.value(record);
                    Object present = value instanceof Optional<?> optional ? optional.orElse(null) : value;
                    return entry.name().equals(Key.INLINE)
                            ? takesLines((Record) value)
                            : present instanceof List<?>
                                    || (present instanceof Record
                                            && !(present instanceof Quantity)
                                            && !(present instanceof Named));
                });
    }

    /** Every quantity of the registry; roll rates by stick. */
    private void numbers(HeadlineNumbers numbers) {
        for (FlightQuantity quantity : FlightQuantity.values()) {
            if (quantity == FlightQuantity.ROLL_RATE) {
                json.key(quantity.key());
                object(() -> numbers.of(quantity)
                        .forEach(entry -> write(entry.stick(), entry.number(), quantity.dimension())));
            } else {
                write(quantity.key(), numbers.number(quantity), quantity.dimension());
            }
        }
    }

    private void headline(Headline headline, double factor) {
        json.shortObject();
        if (headline instanceof Headline.Known known) {
            json.key("value").value(factor * known.value());
            json.key("low").value(factor * known.low());
            json.key("high").value(factor * known.high());
            json.key("basis").value(Codes.of(known.basis()));
            known.learnt().ifPresent(before -> {
                json.key("flown").value(before.flown());
                json.key("before").shortObject();
                json.key("value").value(factor * before.value());
                json.key("low").value(factor * before.low());
                json.key("high").value(factor * before.high());
                json.end();
            });
        } else {
            json.key("value").nothing();
            json.key("why").value(sentences.why((Headline.Unknown) headline));
        }
        json.end();
    }

    private void plain(Object value, double factor) {
        if (value instanceof Double number) {
            json.value(factor * number);
        } else if (value instanceof Integer number) {
            json.value(number.intValue());
        } else if (value instanceof Boolean truth) {
            json.value(truth.booleanValue());
        } else if (value instanceof FlightQuantity quantity) {
            json.value(quantity.key());
        } else if (value instanceof Enum<?> constant) {
            json.value(Codes.of(constant));
        } else {
            json.value(value.toString());
        }
    }
}
