package bagward.store.influx;

import java.io.IOException;
import java.util.Optional;
import okhttp3.Interceptor;
import okhttp3.Response;
import okhttp3.ResponseBody;
import okio.Buffer;
import okio.BufferedSource;
import okio.ForwardingSource;
import okio.Okio;
import okio.Source;

/**
 * Lets only such answers through as InfluxDB gives when it did what was asked: 204 to a write, 200 or 204 to anything
 * else, and no longer than is plausible. Whatever else answers at that address, a login page or a proxy, must not be taken
 * for a stored reading.
 */
final class AnswerCheck implements Interceptor {
    private static final int LONGEST_SAYING = 300;
    private static final int OK = 200;
    private static final int NO_CONTENT = 204;

    private final long longest;

    /**
     * A check.
     *
     * @param longest bytes of the longest answer that is let through
     */
    AnswerCheck(long longest) {
        this.longest = longest;
    }

    @Override
    public Response intercept(Chain chain) throws IOException {
        Response answer = chain.proceed(chain.request());
        boolean write = chain.request().url().encodedPath().endsWith("/write");
        if (answer.code() == NO_CONTENT || (answer.code() == OK && !write)) {
            return capped(answer);
        }
        try (answer) {
            throw new AnswerRefused(answer.code(), said(answer));
        }
    }

    private static String said(Response answer) throws IOException {
        String body = answer.peekBody(LONGEST_SAYING).string().strip();
        String text = body.isEmpty()
                ? Optional.ofNullable(answer.header("X-Influxdb-Error")).orElse(answer.message())
                : body;
        return text.replaceAll("\\s+", " ");
    }

    private Response capped(Response answer) {
        ResponseBody body = answer.body();
        if (body == null) {
            return answer;
        }
        BufferedSource source = Okio.buffer(new Capped(body.source(), longest));
        return answer.newBuilder()
                .body(ResponseBody.create(source, body.contentType(), body.contentLength()))
                .build();
    }

    /** Gives up on an answer that does not end. */
    private static final class Capped extends ForwardingSource {
        private final long longest;
        private long taken;

        Capped(Source from, long longest) {
            super(from);
            this.longest = longest;
        }

        @Override
        public long read(Buffer sink, long byteCount) throws IOException {
            long read = super.read(sink, byteCount);
            taken += Math.max(0, read);
            if (taken > longest) {
                throw new AnswerTooLong(longest);
            }
            return read;
        }
    }
}
