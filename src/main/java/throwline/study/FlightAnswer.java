package throwline.study;

import java.util.List;
import throwline.model.SetUp;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.LoadStation;
import throwline.study.SetUpResult.RollRate;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.words.Message;

/** What one set-up does in steady flight; the components are those of {@link SetUpResult}. */
record FlightAnswer(
        Headline stallSpeed,
        Headline approachSpeed,
        Headline descentAngle,
        Headline sinkRate,
        Headline bestGlideRatio,
        Headline noseDownSpeed,
        Headline elevator,
        Headline elevatorChange,
        List<RollRate> rollRates,
        FirstStall firstStall,
        List<SpeedPoint> sweep,
        List<LoadStation> load) {

    /** The whole result, with what else was found of the set-up. */
    SetUpResult with(SetUp setUp, ServoAnswer servos, FieldAnswer field, List<Message> notes) {
        return new SetUpResult(
                setUp,
                stallSpeed,
                approachSpeed,
                descentAngle,
                sinkRate,
                bestGlideRatio,
                noseDownSpeed,
                elevator,
                elevatorChange,
                rollRates,
                firstStall,
                sweep,
                load,
                servos,
                field,
                notes);
    }
}
