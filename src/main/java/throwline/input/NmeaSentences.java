package throwline.input;

import java.util.OptionalDouble;
import throwline.logs.Channel;
import throwline.words.Message;

/**
 * Reads sentences of NMEA 0183 (layout MEMORY): RMC for position, speed and course, GGA for height; the checksum is the
 * exclusive or of all characters between dollar sign and star. A sentence without a right checksum, or without a fix, is
 * left out and counted.
 */
final class NmeaSentences {

    private static final double KNOT = 1852 / 3600.0;

    private final LogRows rows;
    private final Problems problems;
    private int wrong;
    private int firstWrong;
    private int right;
    private double time = Double.NaN;

    NmeaSentences(LogRows rows, Problems problems) {
        this.rows = rows;
        this.problems = problems;
    }

    void read(String text) {
        int number = 0;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            String sentence = line.strip();
            if (!sentence.startsWith("$")) {
                continue;
            }
            if (isWhole(sentence)) {
                right++;
                take(sentence.substring(1, sentence.indexOf('*')).split(",", -1), number);
            } else {
                wrong++;
                firstWrong = firstWrong == 0 ? number : firstWrong;
                rows.drop();
            }
        }
        if (wrong > right) {
            problems.add(
                    new FilePlace(firstWrong, 1),
                    "",
                    Message.of("input.log.checksums", String.valueOf(wrong), String.valueOf(wrong + right)));
        }
    }

    /** Whether the checksum is there and right. */
    static boolean isWhole(String sentence) {
        int star = sentence.lastIndexOf('*');
        if (star < 0 || sentence.length() != star + 3) {
            return false;
        }
        int sum = 0;
        for (int i = 1; i < star; i++) {
            sum ^= sentence.charAt(i);
        }
        return String.format(java.util.Locale.ROOT, "%02X", sum).equalsIgnoreCase(sentence.substring(star + 1));
    }

    private void take(String[] words, int line) {
        String kind = words[0].length() == 5 ? words[0].substring(2) : "";
        if (kind.equals("RMC") && words.length > 8) {
            if (!words[2].equals("A")) {
                rows.drop();
            } else if (begin(words[1], line)) {
                position(words, 3);
                put(Channel.GROUND_SPEED, words[7], KNOT);
                put(Channel.COURSE, words[8], Math.toRadians(1));
            }
        } else if (kind.equals("GGA") && words.length > 9) {
            if (words[6].isEmpty() || words[6].equals("0")) {
                rows.drop();
            } else if (begin(words[1], line)) {
                position(words, 2);
                put(Channel.HEIGHT, words[9], 1);
            }
        }
    }

    /** Sentences of one time are one row. */
    private boolean begin(String clock, int line) {
        OptionalDouble at = LogClock.digits(clock);
        if (at.isEmpty()) {
            return false;
        }
        if (at.getAsDouble() == time) {
            return true;
        }
        time = at.getAsDouble();
        return rows.begin(time, line);
    }

    private void position(String[] words, int first) {
        angle(words[first], words[first + 1], "S").ifPresent(a -> rows.put(Channel.LATITUDE, a));
        angle(words[first + 2], words[first + 3], "W").ifPresent(a -> rows.put(Channel.LONGITUDE, a));
    }

    /** Degrees and minutes in one number, ddmm.mmmm. */
    private static OptionalDouble angle(String digits, String side, String negative) {
        OptionalDouble value = number(digits);
        if (value.isEmpty()) {
            return value;
        }
        double degrees = Math.floor(value.getAsDouble() / 100);
        double whole = degrees + (value.getAsDouble() - 100 * degrees) / 60;
        return OptionalDouble.of(Math.toRadians(side.equals(negative) ? -whole : whole));
    }

    private void put(Channel channel, String word, double unit) {
        number(word).ifPresent(v -> rows.put(channel, v * unit));
    }

    private static OptionalDouble number(String word) {
        return word.matches("-?\\d+(\\.\\d*)?") ? OptionalDouble.of(Double.parseDouble(word)) : OptionalDouble.empty();
    }
}
