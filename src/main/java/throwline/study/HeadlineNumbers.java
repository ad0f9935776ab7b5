package throwline.study;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Headline numbers of one set-up by quantity.
 *
 * @param byQuantity every quantity but the roll rate, each with its number or the reason why there is none
 * @param rollRates one entry a roll stick that works in the set-up
 */
public record HeadlineNumbers(Map<FlightQuantity, Headline> byQuantity, List<RollRate> rollRates) {

    /**
     * Steady roll at full stick.
     *
     * @param stick name of the stick
     * @param rate to the right, rad/s
     * @param atItsStop true where a surface was cut at its travel
     */
    public record RollRate(String stick, Headline rate, boolean atItsStop) {}

    /**
     * Number of a set-up and its quantity.
     *
     * @param quantity its quantity
     * @param stick with this stick at full; empty without one
     * @param number the number
     */
    public record Entry(FlightQuantity quantity, String stick, Headline number) {}

    public HeadlineNumbers {
        byQuantity = Collections.unmodifiableMap(new EnumMap<>(byQuantity));
        rollRates = List.copyOf(rollRates);
        for (FlightQuantity quantity : FlightQuantity.values()) {
            if (byQuantity.containsKey(quantity) == (quantity == FlightQuantity.ROLL_RATE)) {
                throw new IllegalArgumentException("one number of each, roll rates by stick: " + quantity);
            }
        }
    }

    /** No number at all, for one reason. */
    public static HeadlineNumbers none(Headline.Unknown why) {
        Map<FlightQuantity, Headline> none = new EnumMap<>(FlightQuantity.class);
        Arrays.stream(FlightQuantity.values())
                .filter(quantity -> quantity != FlightQuantity.ROLL_RATE)
                .forEach(quantity -> none.put(quantity, why));
        return new HeadlineNumbers(none, List.of());
    }

    /** The number of a quantity that has one a set-up; roll rates are asked for by stick. */
    public Headline number(FlightQuantity quantity) {
        Headline number = byQuantity.get(quantity);
        if (number == null) {
            throw new IllegalArgumentException(quantity + " has a number a stick");
        }
        return number;
    }

    /** The same with these numbers in place of those of their quantities. */
    public HeadlineNumbers with(Map<FlightQuantity, Headline> others) {
        Map<FlightQuantity, Headline> changed = new EnumMap<>(byQuantity);
        changed.putAll(others);
        return new HeadlineNumbers(changed, rollRates);
    }

    /** Numbers of one quantity: one, or one a stick. */
    public List<Entry> of(FlightQuantity quantity) {
        return quantity == FlightQuantity.ROLL_RATE
                ? rollRates.stream()
                        .map(roll -> new Entry(quantity, roll.stick(), roll.rate()))
                        .toList()
                : List.of(new Entry(quantity, "", number(quantity)));
    }

    /** All numbers, in the order of the registry. */
    public List<Entry> all() {
        return Stream.of(FlightQuantity.values()).flatMap(q -> of(q).stream()).toList();
    }

    /** True where no number is missing that every model has. */
    public boolean isComplete() {
        return all().stream()
                .allMatch(entry -> entry.number() instanceof Headline.Known
                        || !entry.quantity().isExpected());
    }
}
