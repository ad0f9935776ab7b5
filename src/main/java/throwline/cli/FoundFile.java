package throwline.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.input.ModelCopy;
import throwline.input.ReadModel;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.Headlines;
import throwline.section.AirfoilLibrary;
import throwline.sizing.MixCurve;
import throwline.study.FindResult;
import throwline.study.FindResult.TrimFound;

/** A copy of a model file with what was found put in. The file itself is never touched, no file is overwritten. */
final class FoundFile {

    private final Context context;
    private final String model;

    /**
     * @param context of the command
     * @param model the file that is copied
     */
    FoundFile(Context context, String model) {
        this.context = context;
        this.model = model;
    }

    /** Refuses a place where a file is, and a model that came through standard input. */
    void refuseExisting(Path place) {
        if (model.equals("-")) {
            throw new WrongInput(say("cli.find.write.stdin"));
        }
        new NewFile(place, context.words()).refuseExisting();
    }

    /**
     * Writes the copy.
     *
     * @return what was written, in a sentence
     */
    String write(Path place, FindResult result, AirfoilLibrary library) {
        List<SetUp> setUps = setUps(result);
        List<Stick> sticks = result.sticks();
        if (setUps.isEmpty() && sticks.isEmpty()) {
            return say("cli.find.write.nothing");
        }
        String comment = say(result.isMet() ? "cli.find.write.comment" : "cli.find.write.comment.nearest");
        Optional<ModelCopy> copy = read();
        for (SetUp setUp : setUps) {
            copy = copy.flatMap(c -> c.with(setUp, comment));
        }
        for (Stick stick : sticks) {
            copy = copy.flatMap(c -> c.with(stick, comment));
        }
        String text = copy.filter(c -> c.read(place.toString(), library) instanceof ReadModel.Project)
                .map(ModelCopy::text)
                .orElseThrow(() -> new WrongInput(say("cli.find.write.layout", model)));
        new NewFile(place, context.words()).write(text);
        List<String> names = new ArrayList<>();
        setUps.forEach(s -> names.add(s.name()));
        sticks.forEach(s -> names.add(s.name()));
        return say("cli.find.written", place, String.join(", ", names));
    }

    private Optional<ModelCopy> read() {
        try {
            return ModelCopy.of(Path.of(model));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** The set-up that was found, and the one that a mix was made for; each with half of the mix that was found for it. */
    private static List<SetUp> setUps(FindResult result) {
        List<SetUp> setUps = new ArrayList<>();
        Optional<SetUp> found = result.setUp().map(s -> s.found().trial().setUp());
        Optional<TrimFound> trim = result.levelTrim().filter(t -> t.curve().isPresent());
        boolean trimmed = trim.isPresent()
                && found.isPresent()
                && trim.get().to().name().equals(found.get().name());
        if (found.isPresent() && !trimmed) {
            setUps.add(found.get());
        }
        trim.ifPresent(t -> {
            double half = half(t);
            String name = trimmed || found.isPresent()
                    ? t.to().name()
                    : result.question().name();
            if (trimmed || half != 0) {
                setUps.add(
                        new SetUp(trimmed || found.isEmpty() ? name : name + " trimmed", t.to().deflections(), half));
            }
        });
        return setUps;
    }

    private static double half(TrimFound trim) {
        boolean eitherWay =
                Headlines.known(trim.whole()).map(Headlines::eitherWay).orElse(true);
        List<MixCurve.Point> points = trim.curve().orElseThrow().points();
        return eitherWay ? 0 : points.get(points.size() - 1).elevator() / 2;
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
