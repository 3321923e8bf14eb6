# Pooling and prior in R on the studies handed over as JSON on standard input; answers and times as JSON on standard output.
# Used by scripts/bench-evidence.mjs. Times are medians of milliseconds of processor time after one round to warm up.
suppressPackageStartupMessages(library(jsonlite))
input <- fromJSON(file("stdin"))
k <- input$studies$events
n <- input$studies$total
K <- length(k)
limit <- input$limitSeconds
log1pexp <- function(x) ifelse(x > 0, x + log1p(exp(-x)), log1p(exp(x)))

timed <- function(work, rounds) {
  answer <- tryCatch({
    setTimeLimit(elapsed = limit, transient = TRUE)
    first <- system.time(value <- work())[["elapsed"]]
    setTimeLimit(elapsed = Inf)
    value
  }, error = function(e) { setTimeLimit(elapsed = Inf); NULL })
  if (is.null(answer)) return(list(ms = NA))
  if (first > 2) rounds <- 1
  repeats <- max(1, min(20, floor(0.2 / max(first, 1e-3))))
  times <- replicate(rounds, { began <- proc.time(); for (one in 1:repeats) value <- work(); 1000 * sum((proc.time() - began)[c("user.self", "sys.self")]) / repeats })
  c(list(ms = median(times)), answer)
}

pooling <- list()
if (requireNamespace("metafor", quietly = TRUE) && requireNamespace("lme4", quietly = TRUE)) {
  suppressPackageStartupMessages({ library(metafor); library(lme4) })
  if (K <= 100) pooling[["metafor rma.glmm, as it comes"]] <- timed(function() {
    fit <- suppressWarnings(rma.glmm(measure = "PLO", xi = k, ni = n))
    list(mu = as.numeric(fit$beta), tau = sqrt(fit$tau2))
  }, 5)
  data <- data.frame(k = k, n = n, study = factor(seq_along(k)))
  for (points in c(7, 25)) pooling[[sprintf("lme4 glmer, %d nodes, tight stop", points)]] <- timed(function() {
    fit <- suppressMessages(suppressWarnings(glmer(cbind(k, n - k) ~ 1 + (1 | study), data = data, family = binomial, nAGQ = points,
      control = glmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 20000), calc.derivs = FALSE))))
    list(mu = as.numeric(fixef(fit)), tau = as.numeric(attr(VarCorr(fit)$study, "stddev")))
  }, 5)
}
# The marginal likelihood by a vectorised adaptive trapezoid and a quasi-Newton search with its exact slopes, in plain R.
pooling[["plain R, adaptive trapezoid"]] <- timed(function() {
  units <- seq(-9, 9, by = 0.6)
  sums <- function(x) {
    mu <- x[1]; tau <- exp(x[2]); z <- rep(0, K)
    for (round in 1:12) {
      p <- plogis(mu + tau * z)
      z <- z + pmax(-2, pmin(2, (tau * (k - n * p) - z) / (1 + tau^2 * n * p * (1 - p))))
    }
    p <- plogis(mu + tau * z)
    s <- 1 / sqrt(1 + tau^2 * n * p * (1 - p))
    at <- outer(s, units) + z
    theta <- mu + tau * at
    height <- k * theta - n * log1pexp(theta) - at^2 / 2
    top <- k * (mu + tau * z) - n * log1pexp(mu + tau * z) - z^2 / 2
    weight <- exp(height - top)
    total <- rowSums(weight)
    rest <- k - n * plogis(theta)
    list(log = sum(top + log(total * s)), slope = c(sum(rowSums(weight * rest) / total), tau * sum(rowSums(weight * rest * at) / total)))
  }
  fit <- optim(c(qlogis(sum(k) / sum(n)), log(0.4)), function(x) -sums(x)$log, function(x) -sums(x)$slope, method = "BFGS",
    control = list(reltol = 1e-15, maxit = 200))
  list(mu = fit$par[1], tau = exp(fit$par[2]))
}, 5)

# The predictive distribution on the same nodes as ours, handed over: likelihoods as one matrix, normal spreads as matrix
# products, so that all the work is compiled. This is kinder to R than integrate().
prior <- list()
prior[["plain R, the same quadrature as matrix products"]] <- timed(function() {
  g <- input$plan
  theta <- g$from + (0:(g$size - 1)) * g$step
  peak <- ifelse(k == 0 | k == n, 0, k * qlogis(k / n) - n * log1pexp(qlogis(k / n)))
  likelihood <- exp(outer(theta, k) - outer(log1pexp(theta), n) - rep(peak, each = g$size))
  ways <- sum(peak + lchoose(n, k))
  v <- 1 / (k + 0.5) + 1 / (n - k + 0.5)
  y <- qlogis((k + 0.5) / (n + 1))
  columns <- list(); best <- -Inf
  for (j in 0:g$last) {
    tau <- g$unit * sinh(j * g$tauStep)
    w <- 1 / (v + tau^2)
    precision <- sum(w) + 1 / g$sd^2
    mean <- (sum(w * y) + g$mean / g$sd^2) / precision
    sd <- 1 / sqrt(precision)
    stride <- max(1, floor(min(0.7 / sqrt(precision + 1 / tau^2), max(0.35, 0.5 * tau)) / g$step))
    half <- ceiling(9 * sd / (stride * g$step))
    nodes <- round((mean - g$from) / g$step) + 1 + (-half:half) * stride
    mu <- theta[nodes]
    if (tau == 0) {
      spread <- NULL
      evidence <- rowSums(log(likelihood[nodes, , drop = FALSE]))
    } else {
      spread <- dnorm(outer(mu, theta, "-"), 0, tau) * g$step
      evidence <- rowSums(log(spread %*% likelihood))
    }
    log <- evidence + dnorm(mu, g$mean, g$sd, log = TRUE) + log(2) + dnorm(tau, 0, g$scale, log = TRUE) +
      log(g$unit * cosh(j * g$tauStep) * g$tauStep * (if (j == 0) 0.5 else 1) * stride * g$step)
    best <- max(best, log)
    columns[[j + 1]] <- list(log = log, nodes = nodes, spread = spread)
    if (max(log) < best - 40 && tau > 0.5) break
  }
  total <- sum(sapply(columns, function(column) sum(exp(column$log - best))))
  density <- numeric(g$size)
  for (column in columns) {
    weight <- exp(column$log - best) / total
    if (is.null(column$spread)) density[column$nodes] <- density[column$nodes] + weight
    else density <- density + drop(weight %*% column$spread)
  }
  p <- plogis(theta)
  m <- sum(density * p)
  list(mean = m, sd = sqrt(sum(density * (p - m)^2)), logMarginal = log(total) + best + ways)
}, if (K > 500) 1 else 5)
if (K <= 10) prior[["plain R, integrate() inside"]] <- timed(function() {
  g <- input$plan
  logs <- function(mu, tau) sum(mapply(function(a, b) log(integrate(function(z) dbinom(a, b, plogis(mu + tau * z)) * dnorm(z), -9, 9, rel.tol = 1e-10)$value), k, n))
  x <- (1:g$last) * g$tauStep
  mu <- seq(-2.9, -0.9, by = 0.08)
  sum <- 0; first <- 0
  for (one in x) {
    tau <- g$unit * sinh(one)
    weight <- sapply(mu, function(m) exp(logs(m, tau) + 30)) * dnorm(mu, g$mean, g$sd) * dnorm(tau, 0, g$scale) * cosh(one)
    sum <- sum + base::sum(weight)
    first <- first + base::sum(weight * sapply(mu, function(m) integrate(function(z) plogis(m + tau * z) * dnorm(z), -9, 9)$value))
    if (tau > 3) break
  }
  list(mean = first / sum, sd = NA, logMarginal = NA)
}, 1)
packages <- sapply(c("metafor", "lme4"), function(name) if (requireNamespace(name, quietly = TRUE)) as.character(packageVersion(name)) else NA)
cat(toJSON(list(r = R.version.string, packages = as.list(packages), pooling = pooling, prior = prior), auto_unbox = TRUE, digits = NA, na = "null"))
