package startwater.classroom.xapi;

import java.io.ByteArrayOutputStream;
import java.net.http.HttpResponse.BodySubscriber;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;

/** The beginning of an answer, as text: a store that answers without end fills no memory. */
final class CappedBody implements BodySubscriber<String> {
    private static final int MOST_BYTES = 65_536;

    private final CompletableFuture<String> text = new CompletableFuture<>();
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private volatile Flow.@org.jspecify.annotations.Nullable Subscription subscription;

    @Override
    public CompletionStage<String> getBody() {
        return text;
    }

    @Override
    public void onSubscribe(Flow.Subscription given) {
        subscription = given;
        given.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(List<ByteBuffer> parts) {
        for (ByteBuffer part : parts) {
            byte[] bytes = new byte[Math.min(part.remaining(), MOST_BYTES - kept.size())];
            part.get(bytes);
            kept.writeBytes(bytes);
        }
        Flow.Subscription from = subscription;
        if (kept.size() >= MOST_BYTES && from != null) {
            from.cancel();
            onComplete();
        }
    }

    @Override
    public void onError(Throwable broken) {
        text.completeExceptionally(broken);
    }

    @Override
    public void onComplete() {
        text.complete(kept.toString(StandardCharsets.UTF_8));
    }
}
