package startwater.classroom.xapi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Uploads to a real server on this computer, which takes them, refuses them, is busy, drops the line or is slow. */
class UploadTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final int BATCH = 4;

    /** One thing the store does with a post. */
    private interface Mood {
        void answer(HttpExchange exchange, JsonNode batch) throws IOException, InterruptedException;
    }

    @TempDir
    Path folder;

    private HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final Deque<Mood> moods = new ArrayDeque<>();
    private final Map<String, JsonNode> store = Collections.synchronizedMap(new LinkedHashMap<>());
    private final List<Integer> posts = Collections.synchronizedList(new ArrayList<>());
    private final List<Duration> waits = new ArrayList<>();
    private volatile String seenHeaders = "";

    @BeforeEach
    void open() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(threads);
        server.createContext("/xapi/statements", exchange -> {
            JsonNode batch = JSON.readTree(exchange.getRequestBody().readAllBytes());
            posts.add(batch.size());
            seenHeaders = exchange.getRequestHeaders().getFirst("Authorization") + " "
                    + exchange.getRequestHeaders().getFirst("X-Experience-API-Version") + " "
                    + exchange.getRequestMethod();
            Mood mood = moods.isEmpty() ? this::take : moods.pop();
            try {
                mood.answer(exchange, batch);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } finally {
                exchange.close();
            }
        });
        server.start();
    }

    @AfterEach
    void close() {
        server.stop(0);
        threads.shutdownNow();
    }

    private void take(HttpExchange exchange, JsonNode batch) throws IOException {
        batch.forEach(s -> store.put(s.path("id").asString(""), s));
        say(exchange, 200, "[]");
    }

    private static void say(HttpExchange exchange, int status, String words) throws IOException {
        byte[] bytes = words.getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(status, bytes.length);
        exchange.getResponseBody().write(bytes);
    }

    private static Mood status(int status, String words) {
        return (exchange, batch) -> say(exchange, status, words);
    }

    private static Mood later(int status, String retryAfter) {
        return (exchange, batch) -> {
            exchange.getResponseHeaders().set("Retry-After", retryAfter);
            say(exchange, status, "later");
        };
    }

    private static List<ObjectNode> statements(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> JsonNodeFactory.instance.objectNode().put("id", "s" + i))
                .toList();
    }

    private StoreAddress address() {
        try {
            return StoreAddress.of("http://127.0.0.1:" + server.getAddress().getPort() + "/xapi/", "teacher:secret");
        } catch (StoreAddress.RefusedException e) {
            throw new IllegalStateException(e);
        }
    }

    private Upload upload(StoreAddress to, Duration timeout) {
        return new Upload(
                to,
                new Upload.Terms(
                        BATCH,
                        timeout,
                        new BackOff(Duration.ofSeconds(1), Duration.ofSeconds(60), 4),
                        "1.0.3",
                        Clock.fixed(NOW, ZoneOffset.UTC),
                        waits::add));
    }

    private UploadReport send(int count) {
        return upload(address(), Duration.ofSeconds(5))
                .send(statements(count), folder.resolve("state.json"), i -> {}, () -> false);
    }

    @Test
    void sendsAllInBatchesWithTheKeyAndTheVersion() {
        UploadReport report = send(10);
        assertThat(report.end()).isEqualTo(UploadReport.End.DONE);
        assertThat(report.sent()).isEqualTo(10);
        assertThat(report.left()).isZero();
        assertThat(posts).containsExactly(4, 4, 2);
        assertThat(store).hasSize(10);
        // dGVhY2hlcjpzZWNyZXQ= is teacher:secret in Base64.
        assertThat(seenHeaders).isEqualTo("Basic dGVhY2hlcjpzZWNyZXQ= 1.0.3 POST");
    }

    @Test
    void whatIsSentIsNotSentAgainAndNewOnesAre() {
        send(10);
        posts.clear();
        assertThat(send(10).before()).isEqualTo(10);
        assertThat(posts).isEmpty();
        UploadReport more = send(13);
        assertThat(more.before()).isEqualTo(10);
        assertThat(more.sent()).isEqualTo(3);
        assertThat(store).hasSize(13);
    }

    @Test
    void otherStatementsAtTheBeginningMeanAllAreSentAgain() throws IOException {
        send(6);
        List<ObjectNode> other = new ArrayList<>(statements(6));
        other.set(0, JsonNodeFactory.instance.objectNode().put("id", "new"));
        UploadReport report = upload(address(), Duration.ofSeconds(5))
                .send(other, folder.resolve("state.json"), i -> {}, () -> false);
        assertThat(report.before()).isZero();
        assertThat(report.sent()).isEqualTo(6);
        assertThat(Files.readString(folder.resolve("state.json"))).doesNotContain("secret", "dGVh");
    }

    @ParameterizedTest
    @ValueSource(ints = {401, 403})
    void aRefusedKeyEndsItAtOnce(int status) {
        moods.add(status(status, "who are you"));
        UploadReport report = send(10);
        assertThat(report.end()).isEqualTo(UploadReport.End.KEY_REFUSED);
        assertThat(report.said()).contains("who are you");
        assertThat(posts).hasSize(1);
        assertThat(report.left()).isEqualTo(10);
    }

    @Test
    void oneBadStatementIsFoundNamedAndPassedOver() {
        Mood strict = (exchange, batch) -> {
            for (JsonNode s : batch) {
                if (s.path("id").asString("").equals("s5")) {
                    say(exchange, 400, "s5 is\nbad");
                    return;
                }
            }
            take(exchange, batch);
        };
        IntStream.range(0, 30).forEach(i -> moods.add(strict));
        UploadReport report = send(10);
        assertThat(report.end()).isEqualTo(UploadReport.End.DONE);
        assertThat(report.sent()).isEqualTo(9);
        assertThat(report.refused()).containsExactly(new UploadReport.Refused("s5", 400, "400 s5 is bad"));
        assertThat(store).hasSize(9).doesNotContainKey("s5");
    }

    @Test
    void oneThatIsHeldWithOtherContentIsCountedAndTheRestGoesOn() {
        Mood holds = (exchange, batch) -> {
            if (batch.get(0).path("id").asString("").equals("s0")) {
                say(exchange, 409, "conflict");
            } else {
                take(exchange, batch);
            }
        };
        IntStream.range(0, 30).forEach(i -> moods.add(holds));
        UploadReport report = send(6);
        assertThat(report.held()).isEqualTo(1);
        assertThat(report.sent()).isEqualTo(5);
    }

    @Test
    void aBusyStoreIsAskedAgainAfterTheTimeItNames() {
        moods.add(later(429, "7"));
        moods.add(later(503, "Mon, 02 Mar 2026 08:00:30 GMT"));
        moods.add(later(500, "soon"));
        UploadReport report = send(3);
        assertThat(report.end()).isEqualTo(UploadReport.End.DONE);
        assertThat(waits).containsExactly(Duration.ofSeconds(7), Duration.ofSeconds(30), Duration.ofSeconds(4));
        assertThat(report.waits()).isEqualTo(3);
        assertThat(store).hasSize(3);
    }

    @Test
    void aStoreThatStaysBusyIsLeftAlone() {
        IntStream.range(0, 10).forEach(i -> moods.add(status(503, "full")));
        UploadReport report = send(3);
        assertThat(report.end()).isEqualTo(UploadReport.End.BUSY);
        assertThat(posts).hasSize(4);
        assertThat(waits).containsExactly(Duration.ofSeconds(1), Duration.ofSeconds(2), Duration.ofSeconds(4));
    }

    @Test
    void aWaitOfAnHourIsNotSatOut() {
        moods.add(later(429, "3600"));
        assertThat(send(3).end()).isEqualTo(UploadReport.End.BUSY);
        assertThat(waits).isEmpty();
    }

    @Test
    void aLineThatDropsHalfWayIsTriedAgainAndNothingIsThereTwice() {
        moods.add((exchange, batch) -> {
            // Stored, but the answer breaks off: the sender cannot know.
            batch.forEach(s -> store.put(s.path("id").asString(""), s));
            exchange.sendResponseHeaders(200, 100);
            exchange.getResponseBody().write('[');
        });
        UploadReport report = send(4);
        assertThat(report.end()).isEqualTo(UploadReport.End.DONE);
        assertThat(posts).containsExactly(4, 4);
        assertThat(store).hasSize(4);
    }

    @Test
    void aLineThatStaysBrokenEndsItAndTheNextUploadGoesOn() throws IOException {
        moods.add(this::take);
        Mood broken = (exchange, batch) -> exchange.sendResponseHeaders(200, 100);
        IntStream.range(0, 4).forEach(i -> moods.add(broken));
        UploadReport report = send(10);
        assertThat(report.end()).isEqualTo(UploadReport.End.NO_LINE);
        assertThat(report.sent()).isEqualTo(4);
        assertThat(report.left()).isEqualTo(6);
        UploadReport next = send(10);
        assertThat(next.before()).isEqualTo(4);
        assertThat(next.sent()).isEqualTo(6);
        assertThat(store).hasSize(10);
    }

    @Test
    void nobodyListeningIsNoLine() throws IOException {
        int free;
        try (ServerSocket socket = new ServerSocket(0)) {
            free = socket.getLocalPort();
        }
        UploadReport report;
        try {
            report = upload(StoreAddress.of("http://localhost:" + free, "a:b"), Duration.ofSeconds(2))
                    .send(statements(2), folder.resolve("state.json"), i -> {}, () -> false);
        } catch (StoreAddress.RefusedException e) {
            throw new IllegalStateException(e);
        }
        assertThat(report.end()).isEqualTo(UploadReport.End.NO_LINE);
    }

    @Test
    void aSlowStoreIsNotWaitedForLongerThanTheTime() {
        moods.add((exchange, batch) -> Thread.sleep(2_000));
        moods.add((exchange, batch) -> {
            exchange.sendResponseHeaders(200, 10);
            exchange.getResponseBody().write('[');
            exchange.getResponseBody().flush();
            Thread.sleep(2_000);
        });
        UploadReport report = upload(address(), Duration.ofMillis(250))
                .send(statements(2), folder.resolve("state.json"), i -> {}, () -> false);
        assertThat(report.end()).isEqualTo(UploadReport.End.DONE);
        assertThat(posts).hasSize(3);
    }

    @Test
    void aRedirectionIsNotFollowedAndGetsNoKey() throws IOException {
        List<String> elsewhere = new ArrayList<>();
        server.createContext("/other", exchange -> {
            elsewhere.add("asked");
            exchange.close();
        });
        moods.add((exchange, batch) -> {
            exchange.getResponseHeaders().set("Location", "/other");
            say(exchange, 307, "");
        });
        assertThat(send(2).end()).isEqualTo(UploadReport.End.NO_STORE);
        assertThat(elsewhere).isEmpty();
    }

    @Test
    void anAnswerWithoutEndFillsNoMemory() {
        moods.add((exchange, batch) -> {
            exchange.sendResponseHeaders(400, 0);
            byte[] much = new byte[8192];
            for (int i = 0; i < 10_000; i++) {
                exchange.getResponseBody().write(much);
            }
        });
        UploadReport report = send(1);
        assertThat(report.refused()).hasSize(1);
        assertThat(report.refused().get(0).reason().length()).isLessThan(400);
    }

    @Test
    void stopsBetweenBatchesWhenAsked() {
        List<Integer> asked = new ArrayList<>();
        UploadReport report = upload(address(), Duration.ofSeconds(5))
                .send(statements(12), folder.resolve("state.json"), asked::add, () -> asked.size() > 2);
        assertThat(report.end()).isEqualTo(UploadReport.End.STOPPED);
        assertThat(report.sent()).isEqualTo(8);
        assertThat(asked).containsExactly(0, 4, 8);
    }

    @ParameterizedTest
    @CsvSource({
        "http://lrs.example.org/xapi, a:b, PLAIN_HTTP",
        "HTTP://lrs.example.org/xapi, a:b, PLAIN_HTTP",
        "http://localhost.example.org/x, a:b, PLAIN_HTTP",
        "https://a:b@lrs.example.org/xapi, a:b, KEY_IN_ADDRESS",
        "http://localhost@lrs.example.org/xapi, a:b, KEY_IN_ADDRESS",
        "file:///etc/passwd, a:b, NO_ADDRESS",
        "lrs.example.org, a:b, NO_ADDRESS",
        "https://lrs.example.org/xapi?key=1, a:b, NO_ADDRESS",
        "https://lrs.example.org/xapi, ab, BAD_KEY",
        "https://lrs.example.org/xapi, a:, BAD_KEY",
        "https://lrs.example.org/xapi, 'a:b c', BAD_KEY"
    })
    void addressesAndKeysThatWouldLeakAreRefused(String address, String key, StoreAddress.Refusal why) {
        assertThatThrownBy(() -> StoreAddress.of(address, key))
                .isInstanceOfSatisfying(StoreAddress.RefusedException.class, e -> assertThat(e.refusal())
                        .isEqualTo(why));
    }

    @Test
    void theAddressIsPrintedWithoutTheKey() throws StoreAddress.RefusedException {
        StoreAddress address = StoreAddress.of("https://lrs.example.org/xapi/statements/", "name:secret");
        assertThat(address).hasToString("https://lrs.example.org/xapi/statements");
    }

    @Test
    void aServerThatSpeaksNoHttpIsNoLine() throws IOException, StoreAddress.RefusedException {
        try (ServerSocket socket = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            threads.execute(() -> {
                while (!socket.isClosed()) {
                    try (Socket line = socket.accept()) {
                        line.getOutputStream().write("hello\n".getBytes(StandardCharsets.UTF_8));
                    } catch (IOException closed) {
                        return;
                    }
                }
            });
            UploadReport report = upload(
                            StoreAddress.of("http://127.0.0.1:" + socket.getLocalPort(), "a:b"), Duration.ofSeconds(2))
                    .send(statements(1), folder.resolve("state.json"), i -> {}, () -> false);
            assertThat(report.end()).isEqualTo(UploadReport.End.NO_LINE);
        }
    }
}
