package throwline.study;

import java.util.List;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.units.Key;
import throwline.words.Message;

/**
 * The answer to "how does each set-up fly": all packs, all set-ups.
 *
 * @param model what was asked about
 * @param density air density at the field, kg/m^3
 * @param packs one entry a pack, in the model's order or as chosen
 * @param warnings what holds for the whole comparison
 */
public record Comparison(Model model, double density, List<PackResult> packs, List<Message> warnings) {

    public Comparison {
        packs = List.copyOf(packs);
        warnings = List.copyOf(warnings);
    }

    /**
     * All set-ups with one pack.
     *
     * @param pack the pack
     * @param setUps one entry a set-up, in the model's order
     */
    public record PackResult(
            @Key(Key.INLINE) Pack pack, @Key("setups") List<SetUpResult> setUps) {
        public PackResult {
            setUps = List.copyOf(setUps);
        }
    }
}
