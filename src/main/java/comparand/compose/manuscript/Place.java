package comparand.compose.manuscript;

import comparand.compose.text.Run;
import comparand.model.Comparand;
import comparand.model.Origin;
import java.util.Comparator;
import java.util.regex.Pattern;

/** Where a local result comes from: the study, and the step or group in it, steps in the order of their numbers. */
record Place(int study, double step, String text) implements Comparable<Place> {

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    static Place of(Writing writing, Comparand c) {
        return c.origin().fold(p -> new Place(0, 0, ""), l -> of(writing, l));
    }

    private static Place of(Writing writing, Origin.Local local) {
        var title = local.study().title().value();
        var studies =
                writing.run().dossier().studies().stream().map(s -> s.value()).toList();
        var number = NUMBER.matcher(local.group());
        return new Place(
                studies.indexOf(local.study().id()),
                number.find() ? Double.parseDouble(number.group()) : 0,
                local.group().isEmpty()
                        ? title
                        : writing.say(
                                "ms.study-at",
                                "study",
                                title,
                                "step",
                                writing.run().terms().group(local.group())));
    }

    /** What puts results of one place in the order of the dossier's devices: one sign a place in it. */
    static String order(Run run, Comparand c) {
        var devices = run.dossier().devices().stream().map(d -> d.value()).toList();
        return (char) ('a' + devices.indexOf(c.device())) + " " + c.id();
    }

    @Override
    public int compareTo(Place other) {
        return Comparator.comparingInt(Place::study)
                .thenComparingDouble(Place::step)
                .thenComparing(Place::text)
                .compare(this, other);
    }
}
