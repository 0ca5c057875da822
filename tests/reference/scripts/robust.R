# Huber's proposal 2 by MASS::hubers (7.3-58.2) on drawn data with wild values. hubers stops after 30 steps, so its
# equations are then solved on from where it stopped, by 5000 more steps.
# usage: Rscript robust.R OUTPUT_FOLDER      writes hubers.csv (a case a line: k, centre, scale, values)
suppressPackageStartupMessages(library(MASS))
out <- commandArgs(TRUE)[1]
set.seed(1981)
num <- function(x) trimws(formatC(x, digits = 15, format = "g"))
finish <- function(x, k, p) {
  th <- 2 * pnorm(k) - 1; beta <- th + k^2 * (1 - th) - 2 * k * dnorm(k); n <- length(x)
  for (i in 1:5000) { y <- pmin(pmax(p[1] - k * p[2], x), p[1] + k * p[2]); p <- c(mean(y), sqrt(var(y) / beta)) }
  p
}
rows <- c("# MASS::hubers 7.3-58.2, its equations then solved to the end: robust.R", "k,hubers_centre,hubers_scale,centre,scale,values")
for (i in 1:30) {
  n <- sample(5:40, 1); x <- round(rnorm(n, 1.66, 0.05), 4); wild <- sample(n, floor(n / 8)); x[wild] <- round(x[wild] + runif(length(wild), 0.5, 5), 4)
  k <- c(1, 1.5, 2)[1 + i %% 3]; h <- hubers(x, k = k, tol = 1e-12)
  p <- finish(x, k, c(h$mu, h$s))
  rows <- c(rows, paste(k, num(h$mu), num(h$s), num(p[1]), num(p[2]), paste(num(x), collapse = " "), sep = ","))
}
writeLines(rows, file.path(out, "hubers.csv"))
