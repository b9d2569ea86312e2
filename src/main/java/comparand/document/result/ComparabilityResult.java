package comparand.document.result;

/** Whether results of a device may be compared with published values of a metric. */
public record ComparabilityResult(
        @Says("Name of the metric") String metric,
        @Says("Name of the device") String device,

        @Says("The best standing that a source reaches, as in pairs; or no-data")
        String standing,

        @Says("In one word") String word,

        @Says("Number of sources that reach it") int reaching,

        @Says("Number of sources set beside results of the device, or of stated figures, of sources that state one")
        int sources) {}
