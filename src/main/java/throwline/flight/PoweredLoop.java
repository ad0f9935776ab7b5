package throwline.flight;

/**
 * A loop at full throttle, flown all the way at the angle of attack of its pull.
 *
 * @param pull at the entry; its level turn is that of the loop's load
 * @param path as expected
 * @param least the same with as much less pull and more drag as is not known
 * @param most the same the other way round
 */
public record PoweredLoop(PullUp pull, LoopPath path, LoopPath least, LoopPath most) {}
