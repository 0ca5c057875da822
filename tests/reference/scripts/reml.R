# Random effects by restricted maximum likelihood, as lme4, nlme and a plain matrix form of the likelihood find them.
# usage: Rscript reml.R OUTPUT_FOLDER      writes reml_groups.csv, reml_groups_results.csv, reml_known.csv, reml_known_results.csv
# Run with R 4.2.2, lme4 1.1-31, nlme 3.1-162.
suppressPackageStartupMessages({ library(lme4); library(nlme) })
out <- commandArgs(TRUE)[1]
set.seed(20040611)
num <- function(x) trimws(formatC(x, digits = 15, format = "g"))

# groups of unequal sizes -------------------------------------------------------------------------------------------
cases <- list(dyestuff = data.frame(group = as.integer(Dyestuff$Batch), value = Dyestuff$Yield),
              dyestuff2 = data.frame(group = as.integer(Dyestuff2$Batch), value = Dyestuff2$Yield))
for (i in 1:18) {
  sizes <- sample(1:6, sample(3:12, 1), replace = TRUE)
  if (all(sizes == 1)) sizes[1] <- 3
  g <- rep(seq_along(sizes), sizes)
  tau <- c(0, 0.02, 0.05, 0.2)[1 + i %% 4]
  cases[[paste0("random", i)]] <- data.frame(group = g, value = round(1.66 + tau * rnorm(length(sizes))[g] + 0.04 * rnorm(length(g)), 4))
}
slow <- function(d) {            # the restricted likelihood with matrices, maximised over log variances
  n <- nrow(d); Z <- outer(d$group, unique(d$group), "==") * 1; X <- matrix(1, n, 1)
  ll <- function(p) { V <- exp(p[1]) * Z %*% t(Z) + exp(p[2]) * diag(n); Vi <- solve(V)
    A <- t(X) %*% Vi %*% X; P <- Vi - Vi %*% X %*% solve(A) %*% t(X) %*% Vi
    -0.5 * (determinant(V)$modulus + log(A[1]) + t(d$value) %*% P %*% d$value)[1] }
  p <- optim(log(rep(var(d$value) / 2, 2)), ll, control = list(fnscale = -1, reltol = 1e-15, maxit = 4000))$par
  p <- optim(p, ll, control = list(fnscale = -1, reltol = 1e-15, maxit = 4000))$par
  c(sqrt(exp(p)), ll(p))
}
rows <- "case,mean,se,between,within,nlme_between,nlme_within,matrix_between,matrix_within"
data <- "case,group,value"
tight <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhobeg = 0.1, rhoend = 1e-11, maxfun = 1e5), calc.derivs = FALSE)
for (name in names(cases)) {
  d <- cases[[name]]
  data <- c(data, paste(name, d$group, num(d$value), sep = ","))
  f <- suppressMessages(suppressWarnings(lmer(value ~ 1 + (1 | group), d, control = tight)))
  v <- as.data.frame(VarCorr(f))$sdcor
  h <- tryCatch({ m <- lme(value ~ 1, random = ~ 1 | group, data = d, control = lmeControl(msTol = 1e-12, tolerance = 1e-12, returnObject = TRUE))
    as.numeric(nlme::VarCorr(m)[, "StdDev"]) }, error = function(e) c(NA, NA))
  s <- slow(d)
  rows <- c(rows, paste(c(name, num(c(fixef(f), sqrt(vcov(f)[1]), v, h, s[1:2]))), collapse = ","))
}
writeLines(c("# data for reml_groups_results.csv. Dyestuff, Dyestuff2: lme4; the rest drawn by reml.R with a fixed seed", data), file.path(out, "reml_groups.csv"))
writeLines(c("# lme4 1.1-31 (bobyqa, rhoend 1e-11), nlme 3.1-162 and a matrix likelihood by Nelder-Mead: reml.R", rows), file.path(out, "reml_groups_results.csv"))

# known variances ---------------------------------------------------------------------------------------------------
tp <- c(4, 6, 3, 62, 33, 180, 8, 505, 29, 17, 186, 5, 27); tn <- c(119, 300, 228, 13536, 5036, 1361, 2537, 87886, 7470, 1699, 50448, 2493, 16886)
cp <- c(11, 29, 11, 248, 47, 372, 10, 499, 45, 65, 141, 3, 29); cn <- c(128, 274, 209, 12619, 5761, 1079, 619, 87892, 7232, 1600, 27197, 2338, 17825)
known <- list(bcg = data.frame(y = log((tp / (tp + tn)) / (cp / (cp + cn))), u = sqrt(1 / tp - 1 / (tp + tn) + 1 / cp - 1 / (cp + cn))))
for (i in 1:18) {
  n <- sample(2:15, 1); u <- round(exp(runif(n, log(0.01), log(0.08))), 4); tau <- c(0, 0.02, 0.05, 0.2)[1 + i %% 4]
  known[[paste0("random", i)]] <- data.frame(y = round(0.998 + tau * rnorm(n) + u * rnorm(n), 4), u = u)
}
rows <- "case,mean,se_hartung_knapp_at_least_plain,se_hartung_knapp,between,q,low,high"
data <- "case,value,u"
for (name in names(known)) {
  d <- known[[name]]; n <- nrow(d); X <- matrix(1, n, 1)
  data <- c(data, paste(name, num(d$y), num(d$u), sep = ","))
  ll <- function(t2) { Vi <- diag(1 / (d$u^2 + t2)); A <- (t(X) %*% Vi %*% X)[1]; P <- Vi - Vi %*% X %*% t(X) %*% Vi / A
    -0.5 * (sum(log(d$u^2 + t2)) + log(A) + (t(d$y) %*% P %*% d$y)[1]) }
  top <- 4 * var(d$y) + 1e-9
  grid <- seq(0, top, length.out = 4001); k <- which.max(sapply(grid, ll))
  t2 <- if (k == 1 && ll(top * 1e-9) <= ll(0)) 0 else optimize(ll, c(grid[max(1, k - 1)], grid[min(4001, k + 1)]), maximum = TRUE, tol = 1e-14)$maximum
  w <- 1 / (d$u^2 + t2); m <- weighted.mean(d$y, w); f <- lm(y ~ 1, d, weights = w); hk <- sqrt(vcov(f)[1]); plain <- 1 / sqrt(sum(w))
  w0 <- 1 / d$u^2; q <- sum(w0 * (d$y - weighted.mean(d$y, w0))^2)
  se <- max(hk, plain)
  rows <- c(rows, paste(c(name, num(c(m, se, hk, sqrt(t2), q, m + c(-1, 1) * qt(0.975, n - 1) * se))), collapse = ","))
}
writeLines(c("# data for reml_known_results.csv. bcg: log relative risks of 13 trials of a vaccine, counts as in metafor dat.bcg; the rest drawn by reml.R", data), file.path(out, "reml_known.csv"))
writeLines(c("# a matrix likelihood on a grid, then golden section; mean and standard error by lm with weights: reml.R", rows), file.path(out, "reml_known_results.csv"))
