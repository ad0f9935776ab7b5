package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.FlyResult;
import throwline.study.FlyResult.RollDetail;
import throwline.study.Headline;
import throwline.study.OneSided;
import throwline.study.OneSided.Held;
import throwline.study.OneSided.Stays;

/** Section on a wing surface that moves on one side only; nothing where none moves or no stick rolls. */
final class OneSideSection {

    private OneSideSection() {}

    /** The sentences. */
    static List<Paragraph> blocks(FlyResult result) {
        List<Paragraph> said = new ArrayList<>();
        for (OneSided side : result.glance().oneSided()) {
            String key = side.stays() == Stays.BACK ? "fly.one-side.back" : "fly.one-side.out";
            Text about = Text.say(key, new Text.Capital(Text.name(side.surface())), outcome(side));
            said.add(side.held() == Held.NOT ? Paragraph.of(Role.DANGER, about) : Paragraph.of(about));
        }
        for (RollDetail roll : result.rolls()) {
            roll.withOneSide()
                    .ifPresent(rate -> roll.rate()
                            .known()
                            .ifPresent(both -> said.add(Paragraph.say(
                                    "fly.one-side.alone",
                                    roll.stick(),
                                    Value.of(rate, Value.Kind.RATE),
                                    Value.of(both.value(), Value.Kind.RATE)))));
        }
        if (!result.glance().oneSided().isEmpty()) {
            said.add(Paragraph.say("fly.one-side.do"));
        }
        return said;
    }

    private static Text outcome(OneSided side) {
        if (side.held() != Held.NOT && side.share() instanceof Headline.Known share) {
            Text part = Value.share(share.value());
            Text low = Value.share(share.low());
            Text high = Value.share(share.high());
            return side.held() == Held.HELD && side.slowest().isPresent()
                    ? Text.say(
                            "fly.one-side.held",
                            side.stick(),
                            part,
                            low,
                            high,
                            Value.speed(side.slowest().get()))
                    : Text.say("fly.one-side.may-be", side.stick(), part, low, high);
        }
        Text then = side.slowest()
                .map(speed -> Text.say("fly.one-side.faster", Value.speed(speed)))
                .orElseGet(() -> Text.say("fly.one-side.never"));
        return Text.join(Join.BLANK, List.of(Text.say("fly.one-side.not", side.stick()), then));
    }
}
