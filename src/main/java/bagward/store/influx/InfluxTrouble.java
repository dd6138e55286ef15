package bagward.store.influx;

import bagward.store.StoreException;
import java.io.InterruptedIOException;
import java.net.ConnectException;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Optional;
import javax.net.ssl.SSLException;

/** Says in plain words what went wrong between here and InfluxDB and what helps. */
final class InfluxTrouble {
    private static final int TOO_LONG = 413;

    private InfluxTrouble() {}

    /** The error of the client as ours. */
    static StoreException explain(InfluxSettings settings, String what, Throwable e) {
        return new StoreException(
                "InfluxDB at " + settings.url() + ": " + what + " failed; " + remedy(settings, e) + " (" + beneath(e)
                        + ")",
                e);
    }

    /** Whether the database is not there. */
    static boolean missesDatabase(Throwable e) {
        return find(AnswerRefused.class, e)
                .map(answer -> answer.said().toLowerCase(Locale.ROOT).contains("database not found"))
                .orElse(false);
    }

    /** Whether the answer was too long. */
    static boolean tooLong(Throwable e) {
        return find(AnswerTooLong.class, e).isPresent();
    }

    /** Whether the request was too long for the server. */
    static boolean requestTooLong(Throwable e) {
        return answer(e).filter(answer -> answer.status() == TOO_LONG).isPresent();
    }

    /** The answer of the server beneath an error, if there was one. */
    static Optional<AnswerRefused> answer(Throwable e) {
        return find(AnswerRefused.class, e);
    }

    private static String remedy(InfluxSettings settings, Throwable e) {
        Optional<AnswerRefused> answer = find(AnswerRefused.class, e);
        if (answer.isPresent()) {
            return remedy(settings, answer.get());
        }
        if (find(ConnectException.class, e).isPresent()) {
            return "nobody answers there: start InfluxDB, or correct the url";
        }
        if (find(UnknownHostException.class, e).isPresent()) {
            return "no machine of that name is known: correct the url, or the name server";
        }
        if (find(InterruptedIOException.class, e).isPresent()) {
            return "it took too long: look at the load of the server and at the network";
        }
        if (find(SSLException.class, e).isPresent()) {
            return "no trusted TLS connection came about: give the certificate of its authority as ca-file,"
                    + " and the name in its certificate as url";
        }
        return "the answer broke off or is not one of InfluxDB: check the url and the network";
    }

    private static String remedy(InfluxSettings settings, AnswerRefused answer) {
        String who = settings.login().map(InfluxLogin::toString).orElse("nobody in particular");
        return switch (answer.status()) {
            case 401 -> "it does not let in " + who + ": correct user and password, or the token";
            case 403 -> who + " may not do that: grant reading and writing on database '" + settings.database() + "'";
            case TOO_LONG -> "the request is too long for it: raise max-body-size of the server";
            case 429, 502, 503, 504 -> "it is overloaded or starting: wait";
            default -> bySaying(settings, answer);
        };
    }

    private static String bySaying(InfluxSettings settings, AnswerRefused answer) {
        String said = answer.said().toLowerCase(Locale.ROOT);
        if (said.contains("database not found")) {
            return "database '" + settings.database() + "' is missing: create it";
        }
        if (said.contains("retention policy not found")) {
            return "the retention policy is missing: create it in database '" + settings.database()
                    + "', or correct retention-policy";
        }
        if (said.contains("field type conflict")) {
            return "another program keeps fields of the same names there: give Bagward a database of its own";
        }
        if (said.contains("https server")) {
            return "it speaks TLS: write the url with https";
        }
        return "that is no answer to expect of InfluxDB: check the url and the log of the server";
    }

    private static String beneath(Throwable e) {
        Throwable deepest = e;
        while (deepest.getCause() != null) {
            deepest = deepest.getCause();
        }
        return String.valueOf(deepest.getMessage());
    }

    private static <T extends Throwable> Optional<T> find(Class<T> type, Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (type.isInstance(cause)) {
                return Optional.of(type.cast(cause));
            }
        }
        return Optional.empty();
    }
}
