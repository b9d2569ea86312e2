package comparand.app;

/**
 * Keeps Java itself off the network. On some systems, the part of Java that reads typefaces asks for the address of its own
 * machine, and the question may go out to a name server. With a file of hosts that is not there, no name has an address and
 * nobody is asked.
 */
final class Offline {

    /** A property of Java ({@code java.net.InetAddress}): the only file that names are looked up in, where it is set. */
    static final String HOSTS = "jdk.net.hosts.file";

    private Offline() {}

    /** To be called before anything else: Java looks at the property once. A file that somebody named stays. */
    static void begin() {
        if (System.getProperty(HOSTS) == null) {
            System.setProperty(HOSTS, "");
        }
    }
}
