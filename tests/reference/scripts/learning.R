# What past lessons say of rates and step times, by brute force: every unknown on a dense grid, classes and lessons too, nothing in
# closed form. Laws as in docs/methods/learning.md. R 4.2.2, base only.
# usage: Rscript learning.R OUTPUT_FOLDER
out <- commandArgs(TRUE)[1]
num <- function(x) trimws(formatC(x, digits = 12, format = "g"))
rows <- c("# COMPUTED by learning.R: dense grids.", "case,quantity,value")
add <- function(case, what, value) rows <<- c(rows, paste(case, what, num(value), sep = ","))
inner <- function(mass, x, p) approx(cumsum(mass) - mass / 2, x, p, ties = "ordered")$y

# Counts: school's rate mu ~ Beta(20 p, 20 (1 - p)); correlation ~ Beta(1, 9); a class's rate ~ Beta(k mu, k (1 - mu)),
# k = 1 / correlation - 1, or, one in twenty, even from 0 to 1; happened ~ binomial.
parts <- 4000
theta <- (seq_len(parts) - 0.5) / parts
binomial <- function(n, y) exp(y * log(theta) + (n - y) * log1p(-theta))
rate <- function(case, p, tried, happened, known = 0) {
  mu <- qbeta((seq_len(300) - 0.5) / 300, 20 * p, 20 * (1 - p))
  rho <- qbeta((seq_len(60) - 0.5) / 60, 1, 9)
  mass <- matrix(0, length(rho), length(mu)); own <- mass
  for (j in seq_along(rho)) for (i in seq_along(mu)) {
    k <- 1 / rho[j] - 1
    # As probabilities of the grid's cells, since the density may have no bound at 0 and 1.
    law <- 0.95 * diff(pbeta((0:parts) / parts, k * mu[i], k * (1 - mu[i]))) + 0.05 / parts
    w <- 1
    for (c in seq_along(tried)) w <- w * sum(law * binomial(tried[c], happened[c]))
    mass[j, i] <- w
    if (known > 0) {
      l <- law * binomial(tried[known], happened[known])
      own[j, i] <- sum(l * theta) / sum(l)
    }
  }
  mass <- mass / sum(mass)
  m <- colSums(mass)
  add(case, "mean", if (known > 0) sum(mass * own) else sum(m * mu))
  if (known == 0) { add(case, "low", inner(m, mu, 0.05)); add(case, "high", inner(m, mu, 0.95)) }
}
rate("one-class", 0.2, 12, 5)
rate("expected-count", 0.15, c(12, 10), c(1.7, 3.25))
rate("five-classes", 0.2, c(12, 15, 10, 14, 12), c(5, 4, 4, 7, 3))
rate("five-classes-known", 0.2, c(12, 15, 10, 14, 12), c(5, 4, 4, 7, 3), known = 4)
rate("absurd-class", 0.1, c(12, 15, 10, 14, 15), c(1, 2, 0, 1, 15))

# Times as logarithms from the file's mean: school's mean ~ 0.25 t(4); lessons ~ normal about it, spread half-normal(0.2), or, one in
# twenty, spread 1.5; variance of groups ~ scaled inverse chi-squared(10, s0^2).
time <- function(case, s0, done, unfinished) {
  mu <- seq(-3, 3, by = 0.02)
  u <- seq(-9, 9, by = 0.02)
  sigmas <- s0 * exp(seq(-1.2, 1.6, by = 0.05))
  taus <- seq(0.0125, 1, by = 0.025)
  kernel <- function(t) { k <- outer(mu, u, function(a, b) dnorm(b, a, t)); k / rowSums(k) }
  kernels <- lapply(taus, kernel); odd <- kernel(1.5)
  prior <- dt(mu / 0.25, 4)
  m <- 0; squares <- 0
  for (s in sigmas) {
    like <- lapply(seq_along(done), function(l) {
      x <- rep(0, length(u))
      for (y in done[[l]]) x <- x + dnorm(y, u, s, log = TRUE)
      for (y in unfinished[[l]]) x <- x + pnorm(y, u, s, lower.tail = FALSE, log.p = TRUE)
      exp(x) })
    level <- exp(-10 * log(s) - 10 * s0^2 / (2 * s^2))
    for (t in seq_along(taus)) {
      w <- prior * level * dnorm(taus[t], 0, 0.2)
      for (l in like) w <- w * (0.95 * (kernels[[t]] %*% l)[, 1] + 0.05 * (odd %*% l)[, 1])
      m <- m + w; squares <- squares + sum(w) * s^2
    }
  }
  whole <- sum(m); m <- m / whole
  add(case, "mean", sum(m * mu)); add(case, "spread", sqrt(squares / whole))
  add(case, "low", inner(m, mu, 0.05)); add(case, "high", inner(m, mu, 0.95))
}
time("one-lesson", 0.2, list(c(0.35, 0.5, 0.2, 0.41, 0.33)), list(numeric()))
time("three-lessons", 0.2, list(c(0.35, 0.5, 0.2, 0.41), c(0.1, 0.25, 0.3), c(0.3, 0.62, 0.4, 0.45, 0.28)), list(numeric(), numeric(), numeric()))
time("bell", 0.2, list(c(0.15, 0.2), c(0.1, 0.25, 0.3)), list(c(0.3, 0.3, 0.3), c(0.35)))
time("nobody-finished", 0.2, list(numeric()), list(c(0.4, 0.4, 0.4, 0.4)))
time("absurd-lesson", 0.2, list(c(0.05, 0.1, -0.1, 0.02), c(0.1, 0, -0.05), c(1.8, 1.75, 1.9, 1.7)), list(numeric(), numeric(), numeric()))
writeLines(rows, file.path(out, "learning.csv"))
