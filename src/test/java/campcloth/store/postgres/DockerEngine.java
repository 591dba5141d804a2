package campcloth.store.postgres;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.StandardProtocolFamily;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/** Whether an engine for containers answers: asked directly, since it must be quick and quiet where there is none. */
final class DockerEngine {

    private static final int PATIENCE_MILLIS = 1500;

    private DockerEngine() {}

    static boolean answers() {
        return addresses().anyMatch(DockerEngine::answersAt);
    }

    private static Stream<SocketAddress> addresses() {
        String host = Optional.ofNullable(System.getenv("DOCKER_HOST")).orElse("");
        if (host.startsWith("tcp://")) {
            URI uri = URI.create(host);
            return Stream.of(new InetSocketAddress(uri.getHost(), uri.getPort()));
        }
        List<String> sockets = host.startsWith("unix://")
                ? List.of(host.substring("unix://".length()))
                : List.of(
                        "/var/run/docker.sock",
                        System.getProperty("user.home") + "/.docker/run/docker.sock",
                        Optional.ofNullable(System.getenv("XDG_RUNTIME_DIR")).orElse("/run/user") + "/docker.sock");
        return sockets.stream().map(Path::of).filter(Files::exists).map(UnixDomainSocketAddress::of);
    }

    private static boolean answersAt(SocketAddress address) {
        CompletableFuture<Boolean> answer = CompletableFuture.supplyAsync(() -> ping(address));
        try {
            return answer.get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (ExecutionException | TimeoutException silent) {
            return false;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static boolean ping(SocketAddress address) {
        try (SocketChannel channel = address instanceof UnixDomainSocketAddress
                ? SocketChannel.open(StandardProtocolFamily.UNIX)
                : SocketChannel.open()) {
            channel.connect(address);
            String ask = "GET /_ping HTTP/1.1\r\nHost: docker\r\nConnection: close\r\n\r\n";
            channel.write(ByteBuffer.wrap(ask.getBytes(StandardCharsets.US_ASCII)));
            ByteBuffer answer = ByteBuffer.allocate(64);
            channel.read(answer);
            return new String(answer.array(), 0, answer.position(), StandardCharsets.US_ASCII).contains(" 200 ");
        } catch (IOException nobodyThere) {
            return false;
        }
    }
}
