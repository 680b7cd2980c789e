# Makes mixed-expected.csv and the invented data sets mixed-unbalanced.csv, mixed-boundary.csv, mixed-slopes.csv, mixed-many.csv.
#   Rscript generate-mixed.R   (run in this folder; made with R 4.2.2, lme4 1.1-31, lmerTest 3.1-3, pbkrtest 0.5.2, nlme 3.1-162)
suppressMessages({library(lme4); library(lmerTest); library(pbkrtest); library(numDeriv)})
out <- data.frame(case = character(), quantity = character(), value = numeric())
put <- function(case, ...) { v <- c(...); out <<- rbind(out, data.frame(case = case, quantity = names(v), value = unname(v))) }

# lmer stops near 1e-7 in theta. Newton steps with Richardson derivatives on lme4's own deviance function carry it further.
polished <- function(formula, data, REML) {
  parsed <- lFormula(formula, data, REML = REML)
  dev <- do.call(mkLmerDevfun, parsed)
  opt <- optimizeLmer(dev, optimizer = "bobyqa", control = list(rhoend = 1e-9))
  th <- opt$par; free <- !(parsed$reTrms$lower == 0 & th < 1e-4)
  th[!free] <- 0
  if (any(free)) for (step in 1:4) {
    f <- function(x) { t <- th; t[free] <- x; dev(t) }
    th[free] <- th[free] - solve(hessian(f, th[free]), grad(f, th[free]))
  }
  value <- dev(th)
  m <- mkMerMod(environment(dev), list(par = th, fval = value, conv = 0, message = ""), parsed$reTrms, fr = parsed$fr,
                mc = substitute(lmer(formula = F, data = data, REML = R), list(F = formula, R = REML)))
  m
}
report <- function(case, formula, data, REML = TRUE, df = TRUE, kr = FALSE, groups = NULL) {
  m <- polished(formula, data, REML)
  b <- fixef(m); V <- as.matrix(vcov(m))
  put(case, setNames(b, paste0("beta_", names(b))), setNames(sqrt(diag(V)), paste0("se_", names(b))))
  vc <- VarCorr(m); s <- sigma(m)
  D <- matrix(0, 0, 0); for (x in vc) { k <- nrow(D); E <- matrix(0, k + nrow(x), k + nrow(x)); if (k) E[1:k, 1:k] <- D; E[k + 1:nrow(x), k + 1:nrow(x)] <- x; D <- E }
  for (i in 1:nrow(D)) for (j in 1:i) put(case, setNames(D[i, j], paste0("D", i, j)))
  put(case, var_residual = s^2, minus2logLik = -2 * as.numeric(logLik(m)), AIC = AIC(m), BIC = BIC(m))
  if (df) {
    l <- suppressMessages(lmerTest:::as_lmerModLT(m, do.call(mkLmerDevfun, lFormula(formula, data, REML = REML))))
    co <- coef(summary(l)); put(case, setNames(co[, "df"], paste0("df_", rownames(co))), setNames(co[, "Pr(>|t|)"], paste0("p_", rownames(co))))
  }
  if (kr) {
    KV <- vcovAdj(m); put(case, setNames(sqrt(diag(as.matrix(KV))), paste0("kr_se_", names(b))))
    for (i in seq_along(b)) put(case, setNames(Lb_ddf(as.numeric(seq_along(b) == i), vcov(m), KV), paste0("kr_df_", names(b)[i])))
  }
  if (!is.null(groups)) {
    r <- ranef(m, condVar = TRUE)[[1]]; pv <- attr(r, "postVar")
    for (g in groups) for (j in seq_along(r)) {
      put(case, setNames(r[g, j], paste0("blup_", g, "_", j)))
      if (is.array(pv)) put(case, setNames(sqrt(pv[j, j, match(g, rownames(r))]), paste0("condsd_", g, "_", j)))
    }
    # Henderson's mixed-model equations: the error of b with the doubt of the fixed effects in it.
    X <- getME(m, "X"); Z <- as.matrix(getME(m, "Z")); if (ncol(Z) <= 400 && all(getME(m, "theta")[getME(m, "lower") == 0] > 0)) {
      L <- as.matrix(getME(m, "Lambda")); G <- s^2 * L %*% t(L)
      M <- solve(rbind(cbind(crossprod(X), crossprod(X, Z)), cbind(crossprod(Z, X), crossprod(Z) + s^2 * solve(G)))) * s^2
      q <- ncol(r); lev <- rownames(r); two <- length(ranef(m)) == 1
      if (two && length(vc) == 1) for (g in groups) for (j in 1:q) put(case, setNames(sqrt(M[ncol(X) + (match(g, lev) - 1) * q + j, ncol(X) + (match(g, lev) - 1) * q + j]), paste0("fullsd_", g, "_", j)))
    }
  }
  invisible(m)
}
num <- function(v) setNames(v, NULL)

# Orthodontic growth (Potthoff and Roy 1964), as in nlme.
o <- as.data.frame(nlme::Orthodont); o$Subject <- as.character(o$Subject); o$Sex <- factor(as.character(o$Sex), levels = c("Male", "Female"))
write.csv(data.frame(distance = o$distance, age = o$age, subject = o$Subject, sex = o$Sex), "mixed-orthodont.csv", row.names = FALSE, quote = FALSE)
report("orthodont_intercept", distance ~ age * Sex + (1 | Subject), o, kr = TRUE, groups = c("M01", "F11"))
report("orthodont_slope", distance ~ age * Sex + (age | Subject), o, kr = TRUE, groups = c("M01", "F11"))
report("orthodont_slope_ML", distance ~ age * Sex + (age | Subject), o, REML = FALSE)

# Invented: 40 athletes of 3 position groups, 1 to 6 days each at uneven times.
set.seed(15)
u <- do.call(rbind, lapply(1:40, function(i) {
  n <- sample(1:6, 1); day <- sort(sample(0:60, n)); pos <- c("line", "back", "skill")[1 + i %% 3]
  b <- rnorm(2) * c(6, .25); data.frame(athlete = sprintf("A%02d", i), position = pos, day = day, mass = round(rnorm(n, 100, 8), 1),
    y = round(100 + c(line = 0, back = 5, skill = 9)[[pos]] + .1 * day + b[1] + b[2] * day + rnorm(n, 0, 3), 2)) }))
u$position <- factor(u$position, levels = c("line", "back", "skill"))
write.csv(u, "mixed-unbalanced.csv", row.names = FALSE, quote = FALSE)
g <- c("A01", "A17", "A40")
report("unbalanced_intercept", y ~ position * day + (1 | athlete), u, kr = TRUE, groups = g)
report("unbalanced_intercept_ML", y ~ position * day + (1 | athlete), u, REML = FALSE)
report("unbalanced_slope", y ~ position + day + mass + (day | athlete), u, kr = TRUE, groups = g)
report("unbalanced_slope_ML", y ~ position + day + mass + (day | athlete), u, REML = FALSE)
report("unbalanced_uncorrelated", y ~ position + day + mass + (1 | athlete) + (0 + day | athlete), u)
report("unbalanced_only", y ~ 1 + (1 | athlete), u, kr = TRUE)

# Invented: athletes that do not differ, so the best variance between them is 0.
set.seed(7); b <- data.frame(athlete = rep(sprintf("B%d", 1:8), each = 4), day = rep(0:3, 8), y = round(50 + rnorm(32), 3))
b$y <- round(b$y - .8 * ave(b$y - 50, b$athlete), 3)
write.csv(b, "mixed-boundary.csv", row.names = FALSE, quote = FALSE)
report("boundary_intercept", y ~ day + (1 | athlete), b)

# Invented: intercept and slope move together, so the best correlation is 1.
set.seed(11); s <- do.call(rbind, lapply(1:15, function(i) { n <- sample(3:5, 1); x <- 0:(n - 1); a <- rnorm(1)
  data.frame(athlete = sprintf("C%02d", i), day = x, y = round(20 + 2 * a + (1 + .5 * a) * x + rnorm(n, 0, 1.5), 3)) }))
write.csv(s, "mixed-slopes.csv", row.names = FALSE, quote = FALSE)
report("boundary_slope", y ~ day + (day | athlete), s)

# Invented: three random effects.
set.seed(5); q <- do.call(rbind, lapply(1:60, function(i) { n <- sample(4:8, 1); x <- 0:(n - 1); a <- rnorm(3)
  data.frame(athlete = sprintf("Q%02d", i), day = x, day2 = x^2, y = round(30 + 3 * a[1] + (1 + .8 * a[1] * .5 + .8 * a[2]) * x + (.1 + .12 * a[3]) * x^2 + rnorm(n), 3)) }))
write.csv(q, "mixed-quadratic.csv", row.names = FALSE, quote = FALSE)
report("quadratic", y ~ day + day2 + (day + day2 | athlete), q, groups = c("Q01", "Q60"))

# Invented: 2,000 athletes, 1 to 6 days.
set.seed(42); m <- do.call(rbind, lapply(1:2000, function(i) { n <- sample(1:6, 1); x <- sort(sample(0:5, n)); a <- rnorm(2) * c(2, .4)
  data.frame(athlete = i, day = x, y = round(10 + a[1] + (.3 + a[2]) * x + rnorm(n), 2)) }))
write.csv(m, "mixed-many.csv", row.names = FALSE, quote = FALSE)
report("many", y ~ day + (day | athlete), m, groups = c("1", "2000"))
report("many_ML", y ~ day + (day | athlete), m, REML = FALSE, df = FALSE)

# Profile intervals of the dye data by the closed form of a balanced one-way layout and uniroot: no spline in between.
d <- read.csv("mixed-dyestuff.csv"); k <- 5; a <- 6; N <- 30
msb <- k * var(tapply(d$Yield, d$Batch, mean)); mse <- mean(tapply(d$Yield, d$Batch, var))
crit <- function(s2, b2) { l <- s2 + k * b2; N * log(2 * pi) + a * (k - 1) * log(s2) + a * log(l) + a * (k - 1) * mse / s2 + (a - 1) * msb / l }
best <- crit(mse, ((a - 1) / a * msb - mse) / k)
over_s <- function(b2) optimize(function(x) crit(exp(x), b2), log(c(500, 60000)), tol = 1e-12)$objective - best - qchisq(.95, 1)
over_b <- function(s2) optimize(function(x) crit(s2, exp(x)), log(c(1e-6, 60000)), tol = 1e-12)$objective - best - qchisq(.95, 1)
root <- function(f, lo, hi) uniroot(f, c(lo, hi), tol = 1e-12)$root
put("dye_profile", sd_low = root(function(x) over_s(x^2), 1, 37), sd_high = root(function(x) over_s(x^2), 38, 300),
    sigma_low = root(function(x) over_b(x^2), 25, 49), sigma_high = root(function(x) over_b(x^2), 50, 120))

out$value <- sub("^-0$", "0", trimws(formatC(out$value, digits = 17, format = "g")))
write.csv(out, "mixed-expected.csv", row.names = FALSE, quote = FALSE)
