package throwline.study;

import java.util.function.BiFunction;

/**
 * Lessons of flights, ready to put other numbers of the same model right.
 *
 * @param learnt what they told
 * @param correction a set-up's numbers with a pack, by the pack's name, put right
 */
public record Lessons(Learnt learnt, BiFunction<SetUpResult, String, SetUpResult> correction) {}
