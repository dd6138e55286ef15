package bagward.store.influx;

import bagward.store.StoreException;
import bagward.store.TrustedCertificates;
import com.squareup.moshi.JsonDataException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import okhttp3.OkHttpClient;
import org.influxdb.InfluxDB;
import org.influxdb.InfluxDB.ConsistencyLevel;
import org.influxdb.InfluxDBException;
import org.influxdb.InfluxDBFactory;
import org.influxdb.InfluxDBIOException;
import org.influxdb.dto.Query;
import org.influxdb.dto.QueryResult;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Writes to a server and asks it, one request at a time for each thread, and waits for the answer. A database that is
 * missing is created if the user may. Safe for use by several threads.
 */
final class InfluxLink implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(InfluxLink.class);

    private final InfluxSettings settings;
    private final InfluxDB client;

    private InfluxLink(InfluxSettings settings, InfluxDB client) {
        this.settings = settings;
        this.client = client;
    }

    /**
     * A link that asks nothing of the server yet.
     *
     * @param limits what is asked of the server at most
     * @throws bagward.fault.RefusedInputException if the file of certificates cannot be used
     */
    static InfluxLink to(InfluxSettings settings, Limits limits) {
        OkHttpClient.Builder http = new OkHttpClient.Builder()
                .connectTimeout(limits.patience())
                .readTimeout(limits.patience())
                .writeTimeout(limits.patience())
                .callTimeout(limits.patience())
                .socketFactory(new PromptSockets())
                .followRedirects(false)
                .addInterceptor(new AnswerCheck(limits.answerBytes()));
        settings.caFile()
                .map(TrustedCertificates::read)
                .ifPresent(t -> http.sslSocketFactory(t.sockets(), t.manager()));
        settings.login()
                .ifPresent(login -> http.addInterceptor(chain -> chain.proceed(chain.request()
                        .newBuilder()
                        .header("Authorization", login.header())
                        .build())));
        return new InfluxLink(settings, InfluxDBFactory.connect(settings.url(), http));
    }

    /**
     * Writes lines of the line protocol with times in ms. When it returns, the server has them.
     *
     * @param what what this is, for messages
     * @throws StoreException if the server did not say that it has all of them
     */
    void write(String what, String lines) {
        withDatabase(what, () -> {
            client.write(
                    settings.database(),
                    settings.retentionPolicy().orElse(null),
                    ConsistencyLevel.ONE,
                    TimeUnit.MILLISECONDS,
                    lines);
            return lines;
        });
    }

    /**
     * Asks one InfluxQL statement; times in the answer are in ms.
     *
     * @param what what this is, for messages
     * @throws StoreException if there is no answer or an error
     */
    List<QueryResult.Series> ask(String what, String statement) {
        return withDatabase(what, () -> rows(statement));
    }

    /**
     * The same, without creating the database; empty if it is missing.
     *
     * @throws StoreException as above
     */
    Optional<List<QueryResult.Series>> askIfThere(String what, String statement) {
        try {
            return Optional.of(rows(statement));
        } catch (InfluxDBException | JsonDataException e) {
            if (InfluxTrouble.missesDatabase(e)) {
                return Optional.empty();
            }
            throw InfluxTrouble.explain(settings, what, e);
        }
    }

    /** Version of the server, as it says. */
    String version() {
        try {
            return client.version();
        } catch (InfluxDBException e) {
            throw InfluxTrouble.explain(settings, "asking for its version", e);
        }
    }

    private List<QueryResult.Series> rows(String statement) {
        QueryResult answer = client.query(new Query(statement, settings.database(), true), TimeUnit.MILLISECONDS);
        refuse(answer.getError());
        List<QueryResult.Result> results = Optional.ofNullable(answer.getResults())
                .filter(r -> !r.isEmpty())
                .orElseThrow(() -> new InfluxDBIOException(new IOException("an answer without results")));
        refuse(results.get(0).getError());
        return Optional.ofNullable(results.get(0).getSeries()).orElse(List.of());
    }

    private static void refuse(@org.jspecify.annotations.Nullable String error) {
        if (error != null) {
            throw new InfluxDBIOException(new AnswerRefused(200, error));
        }
    }

    private <T> T withDatabase(String what, java.util.function.Supplier<T> work) {
        try {
            return work.get();
        } catch (InfluxDBException | JsonDataException e) {
            if (!InfluxTrouble.missesDatabase(e)) {
                throw InfluxTrouble.explain(settings, what, e);
            }
        }
        create();
        try {
            return work.get();
        } catch (InfluxDBException | JsonDataException e) {
            throw InfluxTrouble.explain(settings, what, e);
        }
    }

    private void create() {
        try {
            rows(Statements.create(settings.database()));
            LOG.info("Created database '{}' in InfluxDB at {}", settings.database(), settings.url());
        } catch (InfluxDBException | JsonDataException e) {
            throw InfluxTrouble.explain(
                    settings, "database '" + settings.database() + "' is missing, and creating it", e);
        }
    }

    @Override
    public void close() {
        client.close();
    }
}
