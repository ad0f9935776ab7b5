package throwline.units;

import java.util.List;

/** Result of reading a quantity. */
public sealed interface ReadQuantity permits ReadQuantity.Amount, ReadQuantity.Refused {

    /**
     * It was understood.
     *
     * @param quantity in SI units
     */
    record Amount(Quantity quantity) implements ReadQuantity {}

    /**
     * It was not.
     *
     * @param code key of the sentence that says why
     * @param arguments what fills the gaps of that sentence
     */
    record Refused(String code, List<String> arguments) implements ReadQuantity {
        public Refused {
            arguments = List.copyOf(arguments);
        }

        static Refused because(String code, String... arguments) {
            return new Refused("input.quantity." + code, List.of(arguments));
        }
    }
}
