# Sign tests by binom.test, permutation tests by listing every rearrangement, equivalence by t.test, analysis of variance by
# aov, BCa intervals by boot 1.3-28 with its replicates kept. R 4.2.2.
# usage: Rscript exact.R OUTPUT_FOLDER
suppressPackageStartupMessages(library(boot))
out <- commandArgs(TRUE)[1]
set.seed(1937)
num <- function(x) trimws(formatC(x, digits = 15, format = "g"))
put <- function(name, rows) writeLines(rows, file.path(out, name))
list1 <- function(x) paste(num(x), collapse = " ")

rows <- c("# binom.test: exact.R", "rises,falls,upper,lower,two_sided")
for (n in c(1, 2, 5, 12, 15, 30, 200, 5000)) for (k in unique(round(n * c(0, 0.3, 0.5, 0.7, 0.9, 1))))
  rows <- c(rows, paste(c(k, n - k, num(c(binom.test(k, n, alternative = "greater")$p.value, binom.test(k, n, alternative = "less")$p.value, binom.test(k, n)$p.value))), collapse = ","))
put("sign_test.csv", rows)

rows <- c("# all sign patterns listed: exact.R", "values,upper,lower,two_sided")
for (i in 1:20) {
  d <- round(rnorm(sample(1:15, 1), c(0, 0.02, 0.05)[1 + i %% 3], 0.05), 2); if (all(d == 0)) d[1] <- 0.01
  w <- round(100 * d); s <- as.matrix(expand.grid(rep(list(c(-1, 1)), length(w)))) %*% abs(w); o <- sum(w)
  rows <- c(rows, paste(list1(d), num(mean(s >= o)), num(mean(s <= o)), num(min(1, 2 * min(mean(s >= o), mean(s <= o)))), sep = ","))
}
put("sign_flip.csv", rows)

rows <- c("# all divisions listed by combn: exact.R", "first,second,upper,lower,two_sided")
for (i in 1:20) {
  a <- round(rnorm(sample(1:7, 1), 1.66, 0.03), 2); b <- round(rnorm(sample(2:7, 1), c(1.66, 1.70)[1 + i %% 2], 0.03), 2); b[1] <- max(c(a, b)) + 0.01
  w <- round(100 * c(a, b)); n <- length(a); N <- length(w); s <- combn(N, n, function(k) sum(w[k])); o <- sum(w[1:n]); e <- n * sum(w)
  rows <- c(rows, paste(list1(a), list1(b), num(mean(s >= o)), num(mean(s <= o)), num(mean(abs(N * s - e) >= abs(N * o - e))), sep = ","))
}
put("two_sample.csv", rows)

rows <- c("# t.test against each bound, its 90 % interval: exact.R", "values,low,high,against_lower,against_upper,interval_low,interval_high")
for (i in 1:20) {
  d <- round(rnorm(sample(2:15, 1), c(0, 0.01, 0.03)[1 + i %% 3], 0.01), 3); b <- 0.02
  rows <- c(rows, paste(c(list1(d), num(c(-b, b, t.test(d, mu = -b, alternative = "greater")$p.value, t.test(d, mu = b, alternative = "less")$p.value, t.test(d, conf.level = 0.9)$conf.int))), collapse = ","))
}
put("equivalence.csv", rows)

rows <- c("# boot.ci type bca, jackknife influence; the replicates: exact.R", "statistic,values,low,high,standard_error,replicates")
for (name in c("mean", "sd", "cv")) {
  x <- round(rlnorm(14, 0.5, 0.4), 3); f <- switch(name, mean = mean, sd = sd, cv = function(x) sd(x) / mean(x))
  b <- boot(x, function(d, i) f(d[i]), 999); j <- sapply(seq_along(x), function(i) f(x[-i])); L <- (length(x) - 1) * (mean(j) - j)
  ci <- boot.ci(b, type = "bca", L = L)$bca[4:5]
  rows <- c(rows, paste(name, list1(x), num(ci[1]), num(ci[2]), num(sd(b$t)), list1(b$t), sep = ","))
}
put("boot_bca.csv", rows)
rows <- c("# boot.ci type bca of the mean with 200000 resamples: exact.R", "values,low,high")
for (i in 1:3) { x <- round(rlnorm(14, 0.5, 0.4), 3); b <- boot(x, function(d, i) mean(d[i]), 200000); j <- sapply(seq_along(x), function(i) mean(x[-i]))
  rows <- c(rows, paste(list1(x), paste(num(boot.ci(b, type = "bca", L = (length(x) - 1) * (mean(j) - j))$bca[4:5]), collapse = ","), sep = ",")) }
put("boot_many.csv", rows)
