# Makes expected.csv from the input files beside it. Base R only.
#   Rscript generate.R        (run in this folder; made with R 4.2.2)
out <- data.frame(case = character(), quantity = character(), value = numeric())
put <- function(case, ...) {
  v <- c(...)
  out <<- rbind(out, data.frame(case = case, quantity = names(v), value = unname(v)))
}
z <- qnorm(.975)

# Mean squares, intraclass correlations and their F intervals, typical error.
icc <- function(case, x) {
  n <- nrow(x); k <- ncol(x); a <- .05
  long <- data.frame(y = as.vector(x), r = factor(rep(1:n, k)), c = factor(rep(1:k, each = n)))
  ms <- anova(lm(y ~ r + c, long))[["Mean Sq"]]
  B <- ms[1]; J <- ms[2]; E <- ms[3]; W <- anova(lm(y ~ r, long))[["Mean Sq"]][2]
  sb <- function(r) k * r / (1 + (k - 1) * r)
  one <- function(F0, d2) { L <- F0 / qf(1 - a/2, n - 1, d2); U <- F0 * qf(1 - a/2, d2, n - 1)
                            c((L - 1) / (L + k - 1), (U - 1) / (U + k - 1)) }
  i1 <- (B - W) / (B + (k - 1) * W); l1 <- one(B / W, n * (k - 1))
  i3 <- (B - E) / (B + (k - 1) * E); l3 <- one(B / E, (n - 1) * (k - 1))
  i2 <- (B - E) / (B + (k - 1) * E + k * (J - E) / n)
  Fj <- J / E; m <- n * (1 + (k - 1) * i2) - k * i2
  v <- (k - 1) * (n - 1) * (k * i2 * Fj + m)^2 / ((n - 1) * k^2 * i2^2 * Fj^2 + m^2)
  Fu <- qf(1 - a/2, n - 1, v); Fl <- qf(1 - a/2, v, n - 1)
  l2 <- c(n * (B - Fu * E) / (Fu * (k * J + (k * n - k - n) * E) + n * B),
          n * (Fl * B - E) / (k * J + (k * n - k - n) * E + n * Fl * B))
  put(case, BMS = B, JMS = J, EMS = E, WMS = W,
      OneWaySingle = i1, OneWaySingle_low = l1[1], OneWaySingle_high = l1[2],
      AgreementSingle = i2, AgreementSingle_low = l2[1], AgreementSingle_high = l2[2],
      ConsistencySingle = i3, ConsistencySingle_low = l3[1], ConsistencySingle_high = l3[2],
      OneWayMean = sb(i1), OneWayMean_low = sb(l1[1]), OneWayMean_high = sb(l1[2]),
      AgreementMean = sb(i2), AgreementMean_low = sb(l2[1]), AgreementMean_high = sb(l2[2]),
      ConsistencyMean = sb(i3), ConsistencyMean_low = sb(l3[1]), ConsistencyMean_high = sb(l3[2]))
  te(case, x)
}
te <- function(case, x) {
  one <- function(x, tag) {
    n <- nrow(x); k <- ncol(x); df <- (n - 1) * (k - 1)
    y <- x - rowMeans(x) - rep(colMeans(x), each = n) + mean(x)
    t <- sqrt(sum(y^2) / df)
    ci <- t * sqrt(df / qchisq(c(.975, .025, .95, .05), df))
    r <- c(t, df, ci); names(r) <- paste0(tag, c("TE", "df", "TE_low", "TE_high", "TE_low90", "TE_high90")); r
  }
  put(case, one(x, ""), one(log(x), "ln_"))
  l <- one(log(x), "")
  put(case, CV = 100 * (exp(l[["TE"]]) - 1), CV_low = 100 * (exp(l[["TE_low"]]) - 1),
      CV_high = 100 * (exp(l[["TE_high"]]) - 1), CV_lognormal = 100 * sqrt(exp(l[["TE"]]^2) - 1))
  for (j in 2:ncol(x)) {
    d <- x[, j] - x[, j - 1]; ci <- t.test(d)$conf.int
    p <- c(mean(d), ci[1], ci[2], sd(d), sd(d) / sqrt(2))
    names(p) <- paste0("pair", j - 1, j, "_", c("change", "change_low", "change_high", "sd_diff", "TE")); put(case, p)
  }
}
sf <- as.matrix(read.csv("shrout-fleiss-1979.csv")[, -1]); icc("shrout_fleiss", sf)
w <- read.csv("weir-2005.csv"); icc("weir_A", as.matrix(w[, 2:3])); icc("weir_B", as.matrix(w[, 4:5]))
r3 <- as.matrix(read.csv("retest-three-trials.csv")[, -1]); icc("retest3", r3); icc("retest3_first2", r3[, 1:2])

# The three-trial set with gaps: residual of the additive model, through lm.
g <- r3; g[1, 3] <- NA; g[4, 1] <- NA; g[7, 2:3] <- NA; g[9, 2] <- NA
long <- data.frame(y = as.vector(g), r = factor(rep(1:10, 3)), c = factor(rep(1:3, each = 10)))
long <- na.omit(long); long <- long[long$r != 7, ]; f <- lm(y ~ droplevels(r) + c, long)
put("retest3_gaps", TE = summary(f)$sigma, df = f$df.residual)

# Individual change.
for (case in list(list("A_known", 3, 2, 1, Inf, 1), list("A_9", 3, 2, 1, 9, 1), list("A_19", 3, 2, 1, 19, 1),
                  list("B_known", .5, 1.2, .6, Inf, 1), list("B_14", .5, 1.2, .6, 14, 1),
                  list("C_known", -4, 1.5, 1, Inf, 1), list("C_28", -4, 1.5, 1, 28, 1),
                  list("D_known", 3, 2, 1, Inf, 3), list("D_18", 3, 2, 1, 18, 3))) {
  D <- case[[2]]; TE <- case[[3]]; S <- case[[4]]; df <- case[[5]]; m <- case[[6]]; se <- TE * sqrt(1 + 1 / m)
  up <- pt((D - S) / se, df); dn <- pt((-S - D) / se, df)
  put(paste0("change_", case[[1]]), difference = D, typical_error = TE, worthwhile = S, df = if (is.finite(df)) df else -1, occasions_before = m,
      above = up, within = 1 - up - dn, below = dn,
      low50 = D - qt(.75, df) * se, high50 = D + qt(.75, df) * se, low90 = D - qt(.95, df) * se, high90 = D + qt(.95, df) * se,
      low95 = D - qt(.975, df) * se, high95 = D + qt(.975, df) * se)
}

# Posterior of a change, normal prior.
for (case in list(list("tau2", 3, 2, 1, 0, 2), list("tau1", 3, 2, 1, 0, 1), list("m1tau2", 3, 2, 1, 1, 2), list("C_tau2", -4, 1.5, 1, 0, 2))) {
  D <- case[[2]]; v <- 2 * case[[3]]^2; S <- case[[4]]; m <- case[[5]]; t2 <- case[[6]]^2
  pv <- 1 / (1 / v + 1 / t2); pm <- pv * (D / v + m / t2)
  put(paste0("posterior_", case[[1]]), difference = D, typical_error = case[[3]], worthwhile = S, prior_mean = m, prior_sd = case[[6]],
      mean = pm, sd = sqrt(pv), above = 1 - pnorm(S, pm, sqrt(pv)), below = pnorm(-S, pm, sqrt(pv)),
      low = pm - z * sqrt(pv), high = pm + z * sqrt(pv))
}

# Tests of a change.
for (case in list(list("A_19", 3, 2, 1, 19), list("E_19", 7.5, 2, 1, 19), list("F_98", .1, .5, 2, 98))) {
  D <- case[[2]]; se <- sqrt(2) * case[[3]]; S <- case[[4]]; df <- case[[5]]
  put(paste0("tests_", case[[1]]), difference = D, typical_error = case[[3]], worthwhile = S, df = df,
      no_change = 2 * pt(-abs(D) / se, df), not_above = pt((S - D) / se, df), not_below = pt((S + D) / se, df),
      not_within = max(pt((D - S) / se, df), pt((-S - D) / se, df)))
}

# Log-normal limits of an unchanged athlete.
for (cv in c(2, 5, 10, 20)) { s <- sqrt(log(1 + (cv / 100)^2))
  put(paste0("percent_limits_", cv), low = 100 * (exp(-z * sqrt(2) * s) - 1), high = 100 * (exp(z * sqrt(2) * s) - 1)) }

# Flag rates.
for (nu in c(4, 5, 7, 9, 14, 19, 29, 49, 98)) put(paste0("normal_multiplier_", nu), rate = 2 * pt(-z, nu), t_multiplier = sqrt(2) * qt(.975, nu))
for (nu in c(5, 9, 19, 49, 98)) for (q in c(.05, .25, .5, .75, .95))
  put(paste0("one_study_", nu), setNames(2 * pnorm(-z * sqrt(qchisq(1 - q, nu) / nu)), paste0("q", q)))
for (k in c(0, .5, 1, 1.5, 2, 2.771808, 3, 4, 5)) {
  put("clear_rate_known", setNames(pnorm(k / sqrt(2) - z) + pnorm(-k / sqrt(2) - z), paste0("change", k)))
  for (nu in c(9, 19)) { t <- qt(.975, nu)
    put(paste0("clear_rate_", nu), setNames(1 - pt(t, nu, k / sqrt(2)) + pt(-t, nu, k / sqrt(2)), paste0("change", k))) }
}
for (s in c(.1, .2, .3, .5, .75, 1, 1.5, 2, 2.5, 3)) put("worthwhile_only", setNames(2 * pnorm(-s / sqrt(2)), paste0("swc", s)))
for (i in c(.5, .7, .8, .9, .95, .98, .99)) put("worthwhile_only_icc", setNames(2 * pnorm(-.2 / sqrt(1 - i) / sqrt(2)), paste0("icc", i)))
for (m in c(1, 5, 10, 20, 25, 30, 50)) put("at_least_one", setNames(1 - .95^m, paste0("m", m)))
for (m in c(1, 5, 10, 25, 54)) put("chance_range", setNames(c(qbinom(.025, m, .05), qbinom(.975, m, .05)), paste0("m", m, c("_low", "_high"))))

# Quantile types.
x <- c(12.1, 15.3, 9.8, 20.4, 17.7, 11.2, 14.9, 13.3, 18.6, 10.5)
for (p in c(.05, .1, .25, .333, .5, .75, .9, .95)) put("quantile7", setNames(quantile(x, p, type = 7, names = FALSE), paste0("p", p)))
put("quantile7", mad = mad(x, constant = 1), mad_constant = 1 / qnorm(.75))

# Shrinkage.
em <- read.csv("efron-morris-1975.csv"); y <- em$hits45 / 45; k <- length(y); m <- mean(y)
for (case in list(list("raw", y, m * (1 - m) / 45), list("arcsine", sqrt(45) * asin(2 * y - 1), 1))) {
  v <- case[[2]]; S <- sum((v - mean(v))^2); w <- 1 - (k - 3) * case[[3]] / S; js <- mean(v) + w * (v - mean(v))
  put(paste0("james_stein_", case[[1]]), mean = mean(v), error_variance = case[[3]], weight = w, first = js[1], last = js[k])
}
ye <- c(28, 8, -3, 7, -1, 1, 18, 12); se <- c(15, 10, 16, 11, 9, 11, 10, 18)
wt <- 1 / se^2; mu <- sum(wt * ye) / sum(wt); Q <- sum(wt * (ye - mu)^2)
put("eight_schools", Q = Q, centre = mu, centre_error = sqrt(1 / sum(wt)))
wt <- 1 / (25 + se^2); mu <- sum(wt * ye) / sum(wt)
put("eight_schools_tau5", centre = mu, A = mu + 25 / (25 + se[1]^2) * (ye[1] - mu), C = mu + 25 / (25 + se[3]^2) * (ye[3] - mu))

out$value <- sub("^-0$", "0", trimws(formatC(out$value, digits = 17, format = "g")))
write.csv(out, "expected.csv", row.names = FALSE, quote = FALSE)
