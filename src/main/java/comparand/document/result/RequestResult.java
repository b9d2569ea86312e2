package comparand.document.result;

import java.util.List;

/** A letter that asks for what was not reported. */
public record RequestResult(
        @Says("Name of the letter's file, without ending") String id,

        @Says("To whom") String to,
        @Says("maker or authors") String kind,
        @Says("Numbers of the sources it asks about") List<Integer> sources,

        @Says("What is asked, in order") List<ItemResult> items) {

    /** One value or property, and what is to be known of it. */
    public record ItemResult(
            @Says("Name of the value, or of the property") String about,

            @Says("Name of the device") String device,

            @Says("Name of the metric; empty for a property that is stated in words")
            String metric,

            @Says("What it is, in words") String subject,
            @Says("As printed; empty where nothing is") String printed,

            @Says("Where, in words; empty where it stands nowhere")
            String place,

            @Says("The words of the source; empty where it has none")
            String quote,

            @Says("What is missing, and in what form it is wanted")
            List<WantedResult> wanted,

            @Says("Why it matters") String why) {}

    /** One fact that is missing. */
    public record WantedResult(
            @Says("What is missing") String what,
            @Says("In what form it is wanted") String form) {}
}
