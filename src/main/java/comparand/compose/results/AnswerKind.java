package comparand.compose.results;

import comparand.model.Answer;

/** What results call an answer. */
public final class AnswerKind {

    private static final Answer.Cases<String> NAMES = new Answer.Cases<>() {
        @Override
        public String tested(Answer.Tested answer) {
            return "tested";
        }

        @Override
        public String eitherReading(Answer.EitherReading answer) {
            return "either-reading";
        }

        @Override
        public String againstFigure(Answer.AgainstFigure answer) {
            return "against-figure";
        }

        @Override
        public String nominal(Answer.Nominal answer) {
            return "nominal";
        }

        @Override
        public String againstLimit(Answer.AgainstLimit answer) {
            return "against-limit";
        }

        @Override
        public String events(Answer.EventCounts answer) {
            return "events";
        }

        @Override
        public String shown(Answer.Shown answer) {
            return "shown";
        }

        @Override
        public String notTestable(Answer.NotTestable answer) {
            return "not-testable";
        }
    };

    private AnswerKind() {}

    public static String of(Answer answer) {
        return answer.fold(NAMES);
    }
}
