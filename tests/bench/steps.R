# The steps of a whole notebook in R, timed: `Rscript steps.R TOPS.csv` prints {step: milliseconds}, the least of five repeats.
# 10,000 draws where a step draws; the sizes of the last three steps are those of the aims in main.ts.
tops <- read.csv(commandArgs(TRUE)[1], stringsAsFactors = TRUE)
suppressMessages({ library(MASS); library(robustbase); library(lme4) })
volume <- tops$length_mm * tops$width_mm * tops$thickness_start_mm * 1e-9
tops$density <- tops$mass_g / 1000 / volume
bent <- function(f, size) 48 * pi^2 / 22.37329^2 * tops$density * f^2 * (size / 1000)^4 / (tops$thickness_start_mm / 1000)^2 / 1e9
tops$E <- bent(tops$f_long_hz, tops$length_mm); tops$C <- bent(tops$f_cross_hz, tops$width_mm)
tops$logE <- log(tops$E); tops$logT <- log(tops$final_thickness_mm); tops$tone <- factor(tops$brightness, ordered = TRUE)
timed <- function(work, atLeast = 0.1) {
  one <- function() { n <- 0; t <- proc.time()[[3]]; repeat { work(); n <- n + 1; if (proc.time()[[3]] - t >= atLeast) return(1000 * (proc.time()[[3]] - t) / n) } }
  min(replicate(5, one()))
}
slope <- function(x, y) { mx <- mean(x); sum((x - mx) * y) / sum((x - mx)^2) }
bca <- function(x, y, draws) {
  n <- length(x); est <- slope(x, y)
  drawn <- vapply(seq_len(draws), function(b) { i <- sample.int(n, n, TRUE); slope(x[i], y[i]) }, 0)
  left <- vapply(seq_len(n), function(i) slope(x[-i], y[-i]), 0); u <- mean(left) - left
  a <- sum(u^3) / (6 * sum(u^2)^1.5); z0 <- qnorm(mean(drawn < est)); z <- z0 + qnorm(c(.025, .975))
  quantile(drawn, pnorm(z0 + z / (1 - a * z)))
}
within <- function(x, y, g, draws) {
  x <- x - ave(x, g); y <- y - ave(y, g); seen <- abs(sum(x * y)); rows <- split(seq_along(y), g)
  mean(vapply(seq_len(draws), function(b) { s <- y; for (r in rows) s[r] <- y[r[sample.int(length(r))]]; abs(sum(x * s)) >= seen }, TRUE))
}
set.seed(1)
x <- rnorm(200); y <- x + rnorm(200); u <- rnorm(300); v <- u + rnorm(300); g <- rep(1:4, 75)
many <- data.frame(a = rnorm(1e5), b = rnorm(1e5), c = rnorm(1e5)); many$y <- many$a + rnorm(1e5)
results <- list(
  ols = timed(function() summary(lm(logT ~ logE, tops))),
  multiple = timed(function() summary(lm(final_thickness_mm ~ E + density + C, tops))),
  influence = timed(function() { m <- lm(final_thickness_mm ~ E + density + C, tops); list(hatvalues(m), cooks.distance(m), rstudent(m)) }),
  robust = timed(function() { rlm(logT ~ logE, tops, acc = 1e-10, maxit = 200); lmrob(logT ~ logE, tops) }),
  ancova = timed(function() { m <- lm(logT ~ logE + species, tops); anova(m, lm(logT ~ logE * species, tops)) }),
  mixed = timed(function() suppressMessages(lmer(logT ~ logE + species + (1 | tree), tops))),
  welch = timed(function() oneway.test(density ~ species, tops)),
  spearman = timed(function() suppressWarnings(cor.test(tops$E, tops$brightness, method = "spearman", exact = FALSE))),
  kendall = timed(function() suppressWarnings(cor.test(tops$E, tops$brightness, method = "kendall", exact = FALSE))),
  polr = timed(function() polr(tone ~ I(log(E / 12)) + I(log(density / 400)), tops, Hess = TRUE)),
  bootstrap_200 = timed(function() bca(x, y, 10000), 0.01),
  permutation_300 = timed(function() within(u, v, g, 10000), 0.01),
  ols_100000 = timed(function() { m <- lm(y ~ a, many); s <- summary(m); list(hatvalues(m), cooks.distance(m), rstudent(m)) }, 0.01)
)
cat("{", paste(sprintf('"%s": %.4f', names(results), unlist(results)), collapse = ", "), "}\n")
