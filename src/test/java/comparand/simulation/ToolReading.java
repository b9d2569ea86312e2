package comparand.simulation;

import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.simulation.Reading.Side;
import comparand.simulation.Reading.Why;
import comparand.simulation.Reading.Withheld;

/** What the tool says of a pair. */
final class ToolReading implements Answer.Cases<Reading> {

    private static final ToolReading CASES = new ToolReading();

    private ToolReading() {}

    static Reading of(Comparison comparison) {
        return comparison.answer().fold(CASES);
    }

    @Override
    public Reading tested(Answer.Tested answer) {
        return Reading.of(answer.verdict(), answer.difference().value());
    }

    /** Where the two readings of a ± disagree, both are printed and neither is said. */
    @Override
    public Reading eitherReading(Answer.EitherReading answer) {
        return answer.agree() ? tested(answer.asSd()) : new Withheld(Why.EITHER_WAY);
    }

    @Override
    public Reading againstFigure(Answer.AgainstFigure answer) {
        return Reading.of(answer.taken().verdict(), answer.taken().difference().value());
    }

    @Override
    public Reading againstLimit(Answer.AgainstLimit answer) {
        return answer.settled() ? new Side(answer.meanMeets()) : new Withheld(Why.NOT_SETTLED);
    }

    @Override
    public Reading shown(Answer.Shown answer) {
        return new Withheld(Why.SHOWN);
    }

    @Override
    public Reading notTestable(Answer.NotTestable answer) {
        return new Withheld(Why.UNTESTABLE);
    }

    @Override
    public Reading nominal(Answer.Nominal answer) {
        throw new IllegalStateException("no pressure drop is nominal");
    }

    @Override
    public Reading events(Answer.EventCounts answer) {
        throw new IllegalStateException("no pressure drop is an event");
    }
}
