package comparand.document.result;

/** One thing that limits what the comparisons can say. */
public record LimitationResult(
        @Says("What kind of limit: differs, not-reported, figure, either-spread, digitised ...")
        String kind,

        @Says("The condition or aspect of the definition it is about; empty where it is about none")
        String about,

        @Says("The same in words; empty where it is about none")
        String name,

        @Says("How many pairs it affects") int pairs,
        @Says("Of how many that could be") int of,

        @Says("What it does to the metric; empty where that is not known")
        String because) {}
