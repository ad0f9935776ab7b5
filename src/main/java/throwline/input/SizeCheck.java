package throwline.input;

/**
 * The most that one model may have, so that every answer takes seconds and 256 MB: the largest comparison allowed takes
 * some 16 s of one processor with its charts. No transmitter has as many.
 */
final class SizeCheck {

    static final int MOST_SET_UPS = 24;
    static final int MOST_PACKS = 8;
    static final int MOST_SURFACES = 12;

    private final Problems problems;

    SizeCheck(Problems problems) {
        this.problems = problems;
    }

    void check(Branch root) {
        Branch setUps = root.child("set-ups");
        Branch packs = root.child("packs");
        boolean few = isWithin(setUps, MOST_SET_UPS);
        few = isWithin(packs, MOST_PACKS) && few;
        few = isWithin(root.child("wing").child("surfaces"), MOST_SURFACES) && few;
        int flown = setUps.children().size() * packs.children().size();
        int moved = flown * root.child("wing").child("surfaces").children().size();
        if (few && flown > ModelFile.MOST_FLOWN) {
            problems.add(setUps, "input.size.flown", String.valueOf(flown), String.valueOf(ModelFile.MOST_FLOWN));
        } else if (few && moved > ModelFile.MOST_MOVED) {
            problems.add(setUps, "input.size.moved", String.valueOf(moved), String.valueOf(ModelFile.MOST_MOVED));
        }
    }

    private boolean isWithin(Branch group, int most) {
        int count = group.children().size();
        if (count > most) {
            problems.add(group, "input.size", String.valueOf(count), String.valueOf(most));
        }
        return count <= most;
    }
}
