# Invented series of mass against time, fitted by nls, and by gnls with a given first-order autoregression.
# usage: Rscript series.R OUTPUT_FOLDER      writes series_readings.csv, series_nls.csv, series_gnls.csv
# Run with R 4.2.2, nlme 3.1-162.
suppressPackageStartupMessages(library(nlme))
out <- commandArgs(TRUE)[1]
set.seed(20061124)
num <- function(x) trimws(formatC(x, digits = 15, format = "g"))
gone <- list(Zeroth = function(t, h) pmin(1, t / (2 * h)),
             First = function(t, h) 1 - exp(-log(2) * t / h),
             Second = function(t, h) (t / h) / (1 + t / h))

# readings: order, start, loss, half-life, number, gap, noise, decimals, autocorrelation ------------------------------
cases <- list(marble = list("First", 182.40, 1.32, 90, 61, 10, 0.010, 2, 0),
              peroxide = list("First", 94.110, 0.842, 41, 31, 5, 0.004, 3, 0),
              rising = list("First", 0.00, -48.2, 22.5, 25, 4, 0.30, 1, 0),
              slow = list("First", 205.3, 2.10, 160, 40, 15, 0.03, 2, 0),
              hyper = list("Second", 182.40, 1.32, 60, 61, 10, 0.010, 2, 0),
              hyper9 = list("Second", 60.150, 0.900, 35, 9, 30, 0.006, 3, 0),
              line = list("Zeroth", 120.00, 0.95, 140, 45, 10, 0.010, 2, 0),
              wavy = list("First", 182.4000, 1.32, 90, 120, 5, 0.010, 6, 0.7),
              wavy2 = list("Second", 182.4000, 1.32, 60, 200, 3, 0.006, 6, 0.5))
readings <- "case,time,reading"
fits <- "case,order,start,loss,half_life,u_start,u_loss,u_half_life,residual_sd,df"
gls <- "case,order,phi,start,loss,half_life,u_start,u_loss,u_half_life,sigma"
for (name in names(cases)) {
  c <- cases[[name]]
  t <- (0:(c[[5]] - 1)) * c[[6]]
  e <- if (c[[9]] > 0) as.numeric(arima.sim(list(ar = c[[9]]), c[[5]], sd = c[[7]] * sqrt(1 - c[[9]]^2))) else rnorm(c[[5]], sd = c[[7]])
  y <- round(c[[2]] - c[[3]] * gone[[c[[1]]]](t, c[[4]]) + e, c[[8]])
  readings <- c(readings, paste(name, t, formatC(y, digits = c[[8]], format = "f"), sep = ","))
  d <- data.frame(t = t, y = y)
  for (order in if (name == "line") "Zeroth" else c("First", "Second")) {
    g <- gone[[order]]
    start <- list(s = c[[2]], l = c[[3]], h = c[[4]])
    if (order == "Zeroth") {               # nls wants derivatives, which the end of the line has not: the least over h by lm
      rss <- function(h) sum(resid(lm(y ~ g(t, h)))^2)
      h <- seq(c[[4]] / 2, c[[4]] * 2, length.out = 3001); k <- which.min(sapply(h, rss))
      h <- optimize(rss, h[c(k - 1, k + 1)], tol = 1e-12)$minimum
      m <- lm(y ~ g(t, h)); l <- -coef(m)[[2]]
      v <- summary(lm(y ~ g(t, h) + I(ifelse(t < 2 * h, l * t / (2 * h^2), 0))))
      fits <- c(fits, paste(c(name, order, num(c(coef(m)[[1]], l, h, v$coefficients[, 2], v$sigma)), v$df[2]), collapse = ","))
      next
    }
    f <- nls(y ~ s - l * g(t, h), d, start, control = nls.control(maxiter = 1000, tol = 1e-6, minFactor = 1e-12, nDcentral = TRUE))
    v <- summary(f)
    fits <- c(fits, paste(c(name, order, num(c(coef(f), v$coefficients[, 2], v$sigma)), v$df[2]), collapse = ","))
    if (c[[9]] > 0 && order == c[[1]]) {
      m <- gnls(y ~ s - l * g(t, h), d, start = coef(f), correlation = corAR1(c[[9]], form = ~ 1, fixed = TRUE),
                control = gnlsControl(nlsTol = 1e-6, tolerance = 1e-9, maxIter = 500, nlsMaxIter = 100))
      gls <- c(gls, paste(c(name, order, c[[9]], num(c(coef(m), sqrt(diag(m$varBeta)), m$sigma))), collapse = ","))
    }
  }
}
writeLines(c("# data for series_nls.csv and series_gnls.csv, drawn by series.R with a fixed seed: invented readings", readings), file.path(out, "series_readings.csv"))
writeLines(c("# R 4.2.2 nls: y = start - loss * gone(t, half_life); gone is min(1, t/2h), 1 - 2^(-t/h), (t/h)/(1 + t/h): series.R", fits), file.path(out, "series_nls.csv"))
writeLines(c("# nlme 3.1-162 gnls with a given correlation phi of neighbours; sigma^2 is over N - p: series.R", gls), file.path(out, "series_gnls.csv"))
