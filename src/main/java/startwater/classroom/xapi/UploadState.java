package startwater.classroom.xapi;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import startwater.content.WholeFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * How far an upload has come: one small file with the address, how many statements are done, and a hash over their ids. It
 * holds no key and nothing of a learner. Where the list of statements no longer begins as it did, all are sent again, which
 * adds nothing to a store.
 */
final class UploadState {
    private static final int MOST_BYTES = 4096;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Path file;
    private final String address;
    private final List<String> ids;

    UploadState(Path file, StoreAddress address, List<String> ids) {
        this.file = file;
        this.address = address.toString();
        this.ids = List.copyOf(ids);
    }

    /** How many of the statements are done, from the first on. */
    int done() {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return 0;
        }
        try (InputStream in = Files.newInputStream(file)) {
            JsonNode state = JSON.readTree(in.readNBytes(MOST_BYTES));
            int done = state.path("done").asInt(0);
            boolean same = done > 0
                    && done <= ids.size()
                    && state.path("address").asString("").equals(address)
                    && state.path("ids").asString("").equals(hash(done));
            return same ? done : 0;
        } catch (IOException | JacksonException e) {
            return 0;
        }
    }

    /** Keeps that so many are done; a crash leaves the old file or the new one whole. */
    void keep(int done) throws IOException {
        String text = JSON.writeValueAsString(JsonNodeFactory.instance
                .objectNode()
                .put("address", address)
                .put("done", done)
                .put("ids", hash(done)));
        WholeFile.replace(file, text + "\n");
    }

    private String hash(int done) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            ids.subList(0, done).forEach(id -> digest.update(id.getBytes(StandardCharsets.UTF_8)));
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
