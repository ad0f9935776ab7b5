package throwline.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import throwline.input.FlightInterview.Asked;
import throwline.logs.Descents.Descent;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.notes.LogSource.Span;
import throwline.words.Message;

/**
 * Questions about a flight that has a log: day, pack, temperature, and which set-up was flown, by the positions of a switch or
 * by time. "back" takes the answer before back; an empty answer to a time takes the one offered.
 */
public final class LogInterview extends StepwiseQuestions {

    private static final KeyTable TABLE = KeyTable.load(KeyTable.FLIGHTS);
    private static final Pattern PIECE = Pattern.compile("(?i)piece\\s*([0-9]{1,4})");
    private static final Pattern SECONDS = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]+)?)\\s*(?:s|seconds)?");
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-9]{2}):([0-9]{2}(?:\\.[0-9]+)?)");
    private static final String NONE = "not measured";

    private final Model model;
    private final String today;
    private final List<Double> positions;
    private final List<Descent> found;

    /**
     * @param model that was flown
     * @param today date that an empty answer to the first question means, year-month-day
     * @param positions of a switch in the log; none where it has no switch, so that times are asked for
     * @param found stretches that are offered
     */
    public LogInterview(Model model, String today, List<Double> positions, List<Descent> found) {
        this.model = model;
        this.today = today;
        this.positions = List.copyOf(positions);
        this.found = List.copyOf(found);
    }

    @Override
    Optional<Message> wrong(Step step, String said) {
        Question question = step.asked().question();
        if (!question.choices().isEmpty()) {
            return wrongChoice(question, said);
        }
        return switch (question.id()) {
            case "date" -> wrongValue("flights.[].date", said);
            case "temperature" -> wrongValue("flights.[].air.temperature", said);
            default -> wrongTime(step, said);
        };
    }

    private static Optional<Message> wrongValue(String path, String said) {
        KeyRow key = TABLE.all().stream()
                .filter(k -> k.path().equals(path))
                .findFirst()
                .orElseThrow();
        return ValueReader.read(key, said) instanceof ValueReader.Wrong wrong
                ? Optional.of(wrong.note())
                : Optional.empty();
    }

    private Optional<Message> wrongTime(Step step, String said) {
        boolean end = step.place().endsWith("/to");
        OptionalDouble time = time(said, end);
        if (time.isEmpty()) {
            return Optional.of(Message.of("input.learn.log.time", said));
        }
        if (!end) {
            return Optional.empty();
        }
        double from = time(said(step.place().replace("/to", "/from")), false).orElse(0);
        if (time.getAsDouble() <= from) {
            return Optional.of(Message.of("input.learn.log.backwards", said, shown(from)));
        }
        Optional<Span> other = spans().stream()
                .filter(span -> span.from() < time.getAsDouble() && span.to() > from)
                .findFirst();
        return other.map(
                span -> Message.of("input.learn.log.twice", span.setUp(), shown(span.from()), shown(span.to())));
    }

    /** A time as the log counts: seconds, a clock, or where a piece that was offered begins or ends. */
    private OptionalDouble time(String said, boolean end) {
        Matcher piece = PIECE.matcher(said);
        if (piece.matches()) {
            int number = Integer.parseInt(piece.group(1));
            if (number < 1 || number > found.size()) {
                return OptionalDouble.empty();
            }
            Descent descent = found.get(number - 1);
            return OptionalDouble.of(end ? Math.ceil(descent.to()) : Math.floor(descent.from()));
        }
        Matcher clock = CLOCK.matcher(said);
        if (clock.matches()) {
            return OptionalDouble.of(Double.parseDouble(clock.group(1)) * 3600
                    + Double.parseDouble(clock.group(2)) * 60
                    + Double.parseDouble(clock.group(3)));
        }
        Matcher seconds = SECONDS.matcher(said);
        return seconds.matches() ? OptionalDouble.of(Double.parseDouble(seconds.group(1))) : OptionalDouble.empty();
    }

    /** A time as a file of flights has it: seconds in the first hour, else a clock. */
    public static String shown(double time) {
        long whole = Math.round(time);
        return whole < 3600
                ? whole + " s"
                : String.format(java.util.Locale.ROOT, "%02d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
    }

    @Override
    Optional<Step> step() {
        List<Step> steps = new ArrayList<>();
        steps.add(step("date", "date", List.of(), "input.new.d.usual", today, ""));
        List<String> packs = model.packs().stream().map(Pack::name).toList();
        if (packs.size() > 1) {
            steps.add(step("pack", "pack", packs, "", "", ""));
        }
        steps.add(step("temperature", "temperature", List.of(), "input.learn.d.not-measured", "", ""));
        for (double position : positions) {
            String place = "switch/" + number(position);
            steps.add(step(place, "log.means", setUps(NONE), "", "", number(position)));
        }
        Optional<Step> first =
                steps.stream().filter(s -> !isAnswered(s.place())).findFirst();
        return first.isPresent() || !positions.isEmpty() ? first : stepOfTime();
    }

    private Optional<Step> stepOfTime() {
        for (int i = 1; ; i++) {
            String place = "span" + i;
            if (said(place).equals(FlightInterview.ALL)) {
                return Optional.empty();
            }
            if (!isAnswered(place)) {
                String id = i == 1 ? "log.setup" : "log.setup.next";
                return Optional.of(
                        step(place, id, setUps(FlightInterview.ALL), "input.learn.d.all", FlightInterview.ALL, ""));
            }
            for (String end : List.of("/from", "/to")) {
                if (!isAnswered(place + end)) {
                    String offered = end.equals("/from") ? nextFrom() : nextTo(place);
                    String fallback = offered.isEmpty() ? "" : "input.new.d.usual";
                    String id = "log" + end.replace('/', '.');
                    return Optional.of(step(place + end, id, List.of(), fallback, offered, said(place)));
                }
            }
        }
    }

    private List<String> setUps(String last) {
        return Stream.concat(model.setUps().stream().map(SetUp::name), Stream.of(last))
                .toList();
    }

    private static Step step(
            String place, String id, List<String> choices, String fallback, String usual, String about) {
        return new Step(place, new Asked(new Question(id, choices, fallback, usual), about), "");
    }

    /** Where the first stretch begins that no set-up was told for. */
    private String nextFrom() {
        double told = spans().stream().mapToDouble(Span::to).max().orElse(0);
        return found.stream()
                .filter(d -> d.from() >= told - 1)
                .findFirst()
                .map(d -> shown(Math.max(told, Math.floor(d.from()))))
                .orElse("");
    }

    /** Where the stretch ends that begins then. */
    private String nextTo(String place) {
        double from = time(said(place + "/from"), false).orElse(0);
        return found.stream()
                .filter(d -> d.to() > from + 1)
                .findFirst()
                .map(d -> shown(Math.ceil(d.to())))
                .orElse("");
    }

    /** Day of the flight. */
    public String date() {
        return said("date");
    }

    /** Its pack. */
    public String pack() {
        return model.packs().size() > 1 ? said("pack") : model.packs().get(0).name();
    }

    /** Temperature as told; empty where not. */
    public String temperature() {
        return said("temperature");
    }

    /** Set-up by position of the switch. */
    public Map<Double, String> meanings() {
        Map<Double, String> meanings = new LinkedHashMap<>();
        for (double position : positions) {
            String setUp = said("switch/" + number(position));
            if (!setUp.isEmpty() && !setUp.equals(NONE)) {
                meanings.put(position, setUp);
            }
        }
        return meanings;
    }

    /** Set-ups by time. */
    public List<Span> spans() {
        List<Span> spans = new ArrayList<>();
        for (int i = 1; isAnswered("span" + i + "/to"); i++) {
            double from = time(said("span" + i + "/from"), false).orElse(0);
            double to = time(said("span" + i + "/to"), true).orElse(0);
            spans.add(new Span(from, to, said("span" + i)));
        }
        return spans;
    }

    /** A position of a switch as it is written. */
    public static String number(double position) {
        return position == Math.rint(position) ? String.valueOf((long) position) : String.valueOf(position);
    }
}
