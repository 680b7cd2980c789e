# Makes reliability.csv from the input files beside it. R base and psych.
#   Rscript reliability.R        (run in this folder; made with R 4.2.2, psych 2.2.9)
out <- data.frame(case = character(), quantity = character(), value = numeric())
put <- function(case, ...) {
  v <- c(...)
  out <<- rbind(out, data.frame(case = case, quantity = names(v), value = unname(v)))
}

# F tests of the intraclass correlations, by psych::ICC.
ftests <- function(case, x) {
  r <- psych::ICC(x, lmer = FALSE)$results
  for (i in 1:6) put(case, setNames(unlist(r[i, c("ICC", "F", "df1", "df2", "p", "lower bound", "upper bound")]),
                                    paste0(r$type[i], "_", c("value", "F", "df1", "df2", "p", "low", "high"))))
}
sf <- as.matrix(read.csv("shrout-fleiss-1979.csv")[, -1]); ftests("shrout_fleiss", sf)
w <- read.csv("weir-2005.csv"); ftests("weir_A", as.matrix(w[, 2:3])); ftests("weir_B", as.matrix(w[, 4:5]))
r3 <- as.matrix(read.csv("retest-three-trials.csv")[, -1]); ftests("retest3", r3)

# Variance components of a table with gaps: sums of squares by lm, the expected mean square by the trace of a projection,
# and the interval through the covariance of y itself: for a trial value theta of the ratio, the squares that athletes take up in
# generalised least squares under V = I + theta Z Z'. Another way to the same interval than eigenvalues.
components <- function(case, g, oneway = FALSE) {
  n <- nrow(g); k <- ncol(g)
  long <- na.omit(data.frame(y = as.vector(g), r = factor(rep(1:n, k)), c = factor(rep(1:k, each = n))))
  long$r <- droplevels(long$r)
  X <- if (oneway) matrix(1, nrow(long), 1) else model.matrix(~ c, long)
  Z <- model.matrix(~ 0 + r, long); y <- long$y; N <- length(y)
  rss <- function(M) { q <- qr(M); c(sum(qr.resid(q, y)^2), N - q$rank) }
  full <- rss(cbind(X, Z)); part <- rss(X)
  mse <- full[1] / full[2]; df1 <- part[2] - full[2]
  H <- diag(N) - X %*% solve(crossprod(X)) %*% t(X)
  between <- (part[1] - full[1] - df1 * mse) / sum(diag(t(Z) %*% H %*% Z))
  W <- function(th) {
    V <- diag(N) + th * Z %*% t(Z); Vi <- solve(V)
    b <- solve(t(X) %*% Vi %*% X, t(X) %*% Vi %*% y); e <- y - X %*% b
    (drop(t(e) %*% Vi %*% e) - full[1]) / df1 / mse
  }
  lambda <- max(eigen(t(Z) %*% H %*% Z, symmetric = TRUE)$values)
  f <- function(p) { th <- uniroot(function(u) log(W(-1 / lambda + exp(u))) - log(qf(p, df1, full[2])), c(-12, 14), tol = 1e-13)$root
                     th <- -1 / lambda + exp(th); th / (1 + th) }
  F0 <- (part[1] - full[1]) / df1 / mse
  put(case, between = between, error = mse, icc = between / (between + mse), F = F0, df1 = df1, df2 = full[2],
      p = pf(F0, df1, full[2], lower.tail = FALSE), low = f(.975), high = f(.025))
}
g <- r3; g[1, 3] <- NA; g[4, 1] <- NA; g[7, 2:3] <- NA; g[9, 2] <- NA
components("gaps", g); components("gaps_oneway", g, TRUE); components("full", r3)
b <- as.matrix(w[, 4:5]); b[2, 2] <- NA; b[6, 1] <- NA; components("weir_B_gaps", b)

# Rank correlation of scatter and mean, exact = FALSE gives Student's t.
growth <- function(case, x) {
  e <- x - rep(colMeans(x), each = nrow(x)); s <- apply(e, 1, sd); m <- rowMeans(x)
  t <- cor.test(s, m, method = "spearman", exact = FALSE); put(case, setNames(c(t$estimate, t$p.value), c("rho", "p")))
}
growth("growth_retest3", r3); growth("growth_retest3_log", log(r3)); growth("growth_weir_A", as.matrix(w[, 2:3]))

# Line: limits of the mean and of a new value.
n <- read.csv("nist-norris.csv"); l <- lm(y ~ x, n); at <- data.frame(x = c(0, 500))
put("norris", setNames(as.vector(predict(l, at, interval = "confidence")), c("fit0", "fit500", "low0", "low500", "high0", "high500")))
put("norris", setNames(as.vector(predict(l, at, interval = "prediction", level = .9))[3:6], c("newlow0", "newlow500", "newhigh0", "newhigh500")))
put("norris", setNames(as.vector(confint(l)), c("intercept_low", "slope_low", "intercept_high", "slope_high")), r = cor(n$x, n$y))
put("women", p = summary(lm(weight ~ height, women))$coefficients[2, 4], F = summary(lm(weight ~ height, women))$fstatistic[[1]])

# One way.
s <- read.csv("nist-sirstv.csv"); put("sirstv", p = anova(lm(y ~ factor(group), s))[["Pr(>F)"]][1])

# Median interval by order statistics, Grubbs bound.
tm <- c(199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57)
put("median_interval", level8 = 1 - 2 * pbinom(0, 8, .5), level20 = 1 - 2 * pbinom(5, 20, .5))
G <- (max(tm) - mean(tm)) / sd(tm); t <- sqrt(8 * 6 * G^2 / (49 - 8 * G^2))
put("grubbs", G = G, p_two = 16 * pt(-t, 6), p_one = 8 * pt(-t, 6))

out$value <- sub("^-0$", "0", trimws(formatC(out$value, digits = 17, format = "g")))
write.csv(out, "reliability.csv", row.names = FALSE, quote = FALSE)
