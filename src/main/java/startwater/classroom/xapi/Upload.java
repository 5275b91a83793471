package startwater.classroom.xapi;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Posts statements to a learning record store, in batches, and goes on where an earlier upload stopped. Only ever started
 * because a teacher asked for it. Follows no redirection: the key is for the address that was named.
 */
public final class Upload {
    private static final int REQUEST_TIMEOUT = 408;
    private static final int CONFLICT = 409;
    private static final int TOO_LARGE = 413;
    private static final int TOO_MANY = 429;
    private static final int BAD_REQUEST = 400;
    private static final int SERVER_FAULT = 500;
    private static final int LONGEST_REASON = 300;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final StoreAddress address;
    private final Terms terms;
    private final HttpClient client;

    /**
     * How to go about it.
     *
     * @param batch statements in one post
     * @param timeout of one post, answer included
     * @param backOff when the store is busy
     * @param version value of the header {@code X-Experience-API-Version}: 1.0.3, or 2.0.0 for a store that wants it
     * @param clock for dates in answers
     * @param patience how a wait is waited
     */
    public record Terms(int batch, Duration timeout, BackOff backOff, String version, Clock clock, Patience patience) {
        public static final Terms USUAL = new Terms(
                50, Duration.ofSeconds(30), BackOff.USUAL, "1.0.3", Clock.systemUTC(), w -> Thread.sleep(w.toMillis()));
    }

    /** Waits. */
    @FunctionalInterface
    public interface Patience {
        void sitOut(Duration wait) throws InterruptedException;
    }

    public Upload(StoreAddress address, Terms terms) {
        this.address = address;
        this.terms = terms;
        this.client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NEVER)
                .connectTimeout(terms.timeout())
                .build();
    }

    /**
     * Sends what is not sent yet.
     *
     * @param statements all of them, each with its id, in an order that stays
     * @param state file that keeps how far it came
     * @param progress gets how many are dealt with
     * @param stop asked before every post
     */
    public UploadReport send(List<ObjectNode> statements, Path state, IntConsumer progress, BooleanSupplier stop) {
        List<String> ids =
                statements.stream().map(s -> s.path("id").asString("")).toList();
        return new Run(statements, new UploadState(state, address, ids), progress, stop).go();
    }

    /** What came back: an answer, or a line that did not hold. @param status 0 without an answer */
    private record Answer(int status, String body, String retryAfter) {
        boolean taken() {
            return status >= 200 && status < 300;
        }

        boolean worthWaiting() {
            return status == 0 || status == TOO_MANY || status == REQUEST_TIMEOUT || status >= SERVER_FAULT;
        }

        String said() {
            String line = body.replaceAll("\\s+", " ").strip();
            return (status == 0 ? "" : status + " ") + line.substring(0, Math.min(line.length(), LONGEST_REASON));
        }
    }

    private Answer post(List<ObjectNode> batch) throws InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(address.statements())
                .timeout(terms.timeout())
                .header("Authorization", address.authorization())
                .header("Content-Type", "application/json")
                .header("X-Experience-API-Version", terms.version())
                .POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(batch), StandardCharsets.UTF_8))
                .build();
        CompletableFuture<HttpResponse<String>> answer = client.sendAsync(request, info -> new CappedBody());
        try {
            HttpResponse<String> r = answer.get(terms.timeout().toMillis(), TimeUnit.MILLISECONDS);
            return new Answer(
                    r.statusCode(),
                    r.body(),
                    r.headers().firstValue("Retry-After").orElse(""));
        } catch (TimeoutException e) {
            answer.cancel(true);
            return new Answer(0, "timeout", "");
        } catch (ExecutionException e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            return new Answer(0, cause.getClass().getSimpleName() + ": " + cause.getMessage(), "");
        }
    }

    /** One upload under way. */
    private final class Run {
        private final List<ObjectNode> statements;
        private final UploadState state;
        private final IntConsumer progress;
        private final BooleanSupplier stop;
        private final int before;
        private final List<UploadReport.Refused> refused = new ArrayList<>();
        private int at;
        private int sent;
        private int held;
        private int waits;
        private int size = terms.batch();

        Run(List<ObjectNode> statements, UploadState state, IntConsumer progress, BooleanSupplier stop) {
            this.statements = statements;
            this.state = state;
            this.progress = progress;
            this.stop = stop;
            this.before = state.done();
            this.at = before;
        }

        UploadReport go() {
            try {
                while (at < statements.size()) {
                    progress.accept(at);
                    if (stop.getAsBoolean()) {
                        return report(UploadReport.End.STOPPED, "");
                    }
                    Optional<UploadReport> ended = next();
                    if (ended.isPresent()) {
                        return ended.get();
                    }
                }
                progress.accept(at);
                return report(UploadReport.End.DONE, "");
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return report(UploadReport.End.STOPPED, "");
            } catch (IOException e) {
                return report(UploadReport.End.NO_STATE, String.valueOf(e.getMessage()));
            }
        }

        /** Sends the next batch; a report where that is the end. */
        private Optional<UploadReport> next() throws InterruptedException, IOException {
            List<ObjectNode> batch = statements.subList(at, Math.min(at + size, statements.size()));
            Answer answer = patiently(batch);
            if (answer.taken()) {
                sent += batch.size();
                return dealtWith(batch.size());
            }
            boolean content =
                    answer.status() == BAD_REQUEST || answer.status() == CONFLICT || answer.status() == TOO_LARGE;
            if (content && batch.size() > 1) {
                // One statement may spoil the whole batch: smaller ones find it.
                size = Math.max(1, batch.size() / 2);
                return Optional.empty();
            }
            if (content) {
                if (answer.status() == CONFLICT) {
                    held++;
                } else {
                    refused.add(new UploadReport.Refused(
                            batch.get(0).path("id").asString(""), answer.status(), answer.said()));
                }
                return dealtWith(1);
            }
            return Optional.of(report(end(answer), answer.said()));
        }

        private Optional<UploadReport> dealtWith(int count) throws IOException {
            at += count;
            state.keep(at);
            size = Math.min(terms.batch(), 2 * size);
            return Optional.empty();
        }

        private Answer patiently(List<ObjectNode> batch) throws InterruptedException {
            Answer answer = post(batch);
            for (int failures = 1; answer.worthWaiting() && !stop.getAsBoolean(); failures++) {
                Optional<Duration> wait = terms.backOff()
                        .before(failures, answer.retryAfter(), terms.clock().instant());
                if (wait.isEmpty()) {
                    return answer;
                }
                waits++;
                terms.patience().sitOut(wait.get());
                answer = post(batch);
            }
            return answer;
        }

        private UploadReport.End end(Answer answer) {
            if (stop.getAsBoolean()) {
                return UploadReport.End.STOPPED;
            }
            return switch (answer.status()) {
                case 0 -> UploadReport.End.NO_LINE;
                case 401, 403 -> UploadReport.End.KEY_REFUSED;
                case TOO_MANY, REQUEST_TIMEOUT -> UploadReport.End.BUSY;
                default -> answer.status() >= SERVER_FAULT ? UploadReport.End.BUSY : UploadReport.End.NO_STORE;
            };
        }

        private UploadReport report(UploadReport.End end, String said) {
            return new UploadReport(statements.size(), before, sent, held, refused, waits, end, said);
        }
    }
}
