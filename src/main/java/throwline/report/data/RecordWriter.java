package throwline.report.data;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.report.Sentences;
import throwline.study.Headline;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * Result records as JSON: a key a component in the order of the record, angles in degrees where {@link Measure} says so, the
 * rest in SI units, constants as codes, what is empty as null, a headline number with its band or the reason why there is
 * none. {@link Key} gives a component another name or leaves it out.
 */
final class RecordWriter {

    private final JsonWriter json;
    private final Sentences sentences;

    RecordWriter(JsonWriter json, Sentences sentences) {
        this.json = json;
        this.sentences = sentences;
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
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Key key = component.getAnnotation(Key.class);
            Measure measure = component.getAnnotation(Measure.class);
            String name = key == null ? component.getName() : key.value();
            if (!name.equals(Key.NONE)) {
                write(name, value(record, component), measure == null ? Dimension.NUMBER : measure.value());
            }
        }
    }

    private static Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private void value(Object value, Dimension dimension) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresentOrElse(present -> value(present, dimension), json::nothing);
        } else if (value instanceof List<?> list) {
            json.array();
            list.forEach(entry -> value(entry, dimension));
            json.end();
        } else if (value instanceof Headline headline) {
            headline(headline, DataUnit.of(dimension).factor());
        } else if (value instanceof Message message) {
            json.shortObject();
            json.key("code").value(message.code());
            json.key("text").value(sentences.say(message));
            json.end();
        } else if (value instanceof Quantity quantity) {
            value(quantity.value(), quantity.dimension());
        } else if (value instanceof Record record) {
            record(record);
        } else {
            plain(value, DataUnit.of(dimension).factor());
        }
    }

    private void record(Record record) {
        boolean nested = Arrays.stream(record.getClass().getRecordComponents())
                .map(component -> value(record, component))
                .flatMap(value -> value instanceof Optional<?> optional ? optional.stream() : Stream.of(value))
                .anyMatch(
                        value -> value instanceof List<?> || (value instanceof Record && !(value instanceof Quantity)));
        if (nested) {
            json.object();
        } else {
            json.shortObject();
        }
        components(record);
        json.end();
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
        } else if (value instanceof Enum<?> constant) {
            json.value(Codes.of(constant));
        } else {
            json.value(value.toString());
        }
    }
}
