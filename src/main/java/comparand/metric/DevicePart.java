package comparand.metric;

import java.util.List;

/** The parts of an oxygenator that a value may include. */
final class DevicePart {

    static final List<String> OXYGENATOR = List.of("oxygenator", "exchanger", "filter", "reservoir", "connectors");

    private DevicePart() {}
}
