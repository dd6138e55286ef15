package bagward.pollen;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.ToDoubleFunction;

/** Asks R: {@code cor.test} of Debian package r-base-core and {@code polr} of r-cran-mass, both from outside this project. */
final class StatisticsOfR {
    private static final String SCRIPT = """
            arguments <- commandArgs(trailingOnly = TRUE)
            suppressWarnings(suppressMessages(library(MASS)))
            data <- read.csv(arguments[1])
            say <- function(name, value) cat(sprintf("%%s %%.12g\\n", name, value))
            test <- suppressWarnings(cor.test(data$x, data$score, method = "spearman", exact = FALSE))
            say("rho", test$estimate)
            say("p", test$p.value)
            levels <- sort(unique(data$score))
            fit <- suppressWarnings(polr(factor(score, levels = levels) ~ x, data = data, weights = weight,
                        Hess = TRUE, control = list(reltol = 1e-14, maxit = 500)))
            errors <- sqrt(diag(vcov(fit)))
            say("slope", coef(fit)[1])
            say("slope error", errors[1])
            for (i in seq_along(fit$zeta)) {
              say(paste("cut", i), fit$zeta[i])
              say(paste("cut error", i), errors[1 + i])
            }
            say("deviance", fit$deviance)
            """.replace("%%", "%");

    private StatisticsOfR() {}

    /** What R makes of scores against a predictor, by name. */
    static ToDoubleFunction<String> ask(Path folder, double[] x, int[] scores, double[] weights)
            throws IOException, InterruptedException {
        Path script = Files.writeString(folder.resolve("ask.R"), SCRIPT);
        Path data = Files.writeString(folder.resolve("data.csv"), csv(x, scores, weights));
        Path said = folder.resolve("said.txt");
        Process process;
        try {
            process = new ProcessBuilder("Rscript", "--vanilla", script.toString(), data.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
        } catch (IOException missing) {
            throw new AssertionError(
                    "Rscript is missing: install the Debian packages r-base-core and r-cran-mass", missing);
        }
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("R did not answer within a minute");
        }
        String answer = Files.readString(said, StandardCharsets.UTF_8);
        if (process.exitValue() != 0) {
            throw new AssertionError("R failed; it needs the Debian packages r-base-core and r-cran-mass: " + answer);
        }
        Map<String, Double> numbers = numbers(answer);
        return name -> Optional.ofNullable(numbers.get(name))
                .orElseThrow(() -> new AssertionError("R said nothing of " + name + ": " + answer));
    }

    private static String csv(double[] x, int[] scores, double[] weights) {
        StringBuilder text = new StringBuilder("x,score,weight\n");
        for (int i = 0; i < x.length; i++) {
            text.append(String.format(Locale.ROOT, "%.15g,%d,%.15g%n", x[i], scores[i], weights[i]));
        }
        return text.toString();
    }

    private static Map<String, Double> numbers(String answer) {
        Map<String, Double> numbers = new HashMap<>();
        for (String line : answer.lines().toList()) {
            int space = line.lastIndexOf(' ');
            numbers.put(line.substring(0, space), Double.parseDouble(line.substring(space + 1)));
        }
        return numbers;
    }
}
