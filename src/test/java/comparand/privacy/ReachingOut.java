package comparand.privacy;

import static java.util.Objects.requireNonNull;

import comparand.app.CommandLineUse;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.StandardProtocolFamily;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.channels.SocketChannel;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import javax.xml.parsers.DocumentBuilderFactory;
import org.xml.sax.InputSource;

/** Tries to reach out in every way there is, to see that each is noticed. Nothing leaves the machine, watched or not. */
final class ReachingOut {

    /** A port at which nobody listens, of this machine alone. */
    private static final int DISCARD = 9;

    private ReachingOut() {}

    /** Each way by name, in the order tried. */
    static Map<String, Callable<?>> ways() {
        var ways = new LinkedHashMap<String, Callable<?>>();
        var here = InetAddress.getLoopbackAddress();
        ways.put("name", () -> InetAddress.getAllByName("name.invalid"));
        ways.put("socket", () -> {
            try (var socket = new Socket(here, DISCARD)) {
                return socket.getPort();
            }
        });
        ways.put("channel", () -> {
            try (var channel = SocketChannel.open(new InetSocketAddress(here, DISCARD))) {
                return channel.isConnected();
            }
        });
        ways.put("datagram", () -> {
            try (var socket = new DatagramSocket()) {
                socket.send(new DatagramPacket(new byte[1], 1, here, DISCARD));
                return socket.getLocalPort();
            }
        });
        ways.put("server", () -> {
            try (var socket = new ServerSocket(0, 1, here)) {
                return socket.getLocalPort();
            }
        });
        ways.put("unix", () -> {
            try (var channel = SocketChannel.open(StandardProtocolFamily.UNIX)) {
                return channel.connect(UnixDomainSocketAddress.of("nowhere"));
            }
        });
        ways.put("url", () -> {
            try (InputStream in = URI.create("http://127.0.0.1:9/").toURL().openStream()) {
                return in.read();
            }
        });
        ways.put(
                "client",
                () -> HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create("http://127.0.0.1:9/"))
                                        .build(),
                                BodyHandlers.discarding()));
        ways.put(
                "doctype",
                () -> DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(
                                new StringReader("<!DOCTYPE a SYSTEM 'http://127.0.0.1:9/a.dtd'><a/>"))));
        ways.put("program", () -> new ProcessBuilder("true").start());
        return ways;
    }

    /** Tries the way that is named; or, once the tool has begun, to find a name. It is expected to fail. */
    public static void main(String[] arguments) throws Exception {
        try {
            if (arguments[0].equals("begun")) {
                CommandLineUse.offline();
                requireNonNull(ways().get("name")).call();
            } else {
                requireNonNull(ways().get(arguments[0])).call();
            }
        } catch (IOException | SecurityException e) {
            System.out.println(e.getMessage());
        }
    }
}
