# Makes season-trend.csv (invented) and season-trend-expected.csv: means of athletes themselves in a weighted mixed model.
#   Rscript generate-season-trend.R   (run in this folder; made with R 4.2.2, lme4 1.1-31, lmerTest 3.1-3)
suppressMessages({library(lme4); library(lmerTest)})
set.seed(41)
rows <- NULL
for (i in 1:16) {
  a <- rnorm(1, if (i <= 9) 4.95 else 4.70, 0.09); b <- rnorm(1, 0.06, 0.04)
  for (d in c(0, 0, 42, 84, 140)) {
    if (runif(1) < 0.15) next
    w <- if (d == 42) 0.4 else 1
    rows <- rbind(rows, data.frame(athlete = sprintf("P%02d", i), group = if (i <= 9) "backs" else "line", day = d,
                                   value = signif(a + b * d / 140 + rnorm(1, 0, 0.025 / sqrt(w)), 6), weight = w))
  }
}
write.csv(rows, "season-trend.csv", row.names = FALSE, quote = FALSE)
out <- data.frame(quantity = character(), value = numeric())
put <- function(q, v) out <<- rbind(out, data.frame(quantity = q, value = v))
days <- c(0, 42, 84, 140)
fit <- function(tag, cells, members) {
  rows$cell <- factor(cells, levels = sort(unique(cells)))
  m <- lmer(value ~ 0 + cell + (day | athlete), rows, weights = weight,
            control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12, maxfun = 1e6), check.scaleX = "ignore"))
  m0 <- as_lmerModLmerTest(m)
  put(paste0(tag, "_sigma"), sigma(m)); put(paste0(tag, "_minus2logLik"), -2 * as.numeric(logLik(m)))
  lev <- levels(rows$cell); p <- length(lev)
  A <- m0@vcov_varpar; k <- nrow(A); put(paste0(tag, "_df_residual"), sigma(m)^2 / (2 * A[k, k]))
  # Henderson's equations with the weights: errors of fixed and random effects together.
  X <- getME(m, "X"); Z <- as.matrix(getME(m, "Z")); s2 <- sigma(m)^2; L <- as.matrix(getME(m, "Lambda")); G <- s2 * L %*% t(L); W <- diag(rows$weight)
  M <- solve(rbind(cbind(t(X) %*% W %*% X, t(X) %*% W %*% Z), cbind(t(Z) %*% W %*% X, t(Z) %*% W %*% Z + s2 * solve(G)))) * s2
  est <- c(fixef(m), as.vector(getME(m, "b"))); ids <- levels(getME(m, "flist")[[1]])
  own <- function(cell, day, who) { v <- numeric(length(est)); v[match(cell, lev)] <- 1
    for (g in who) { j <- p + 2 * (match(g, ids) - 1); v[j + 1] <- v[j + 1] + 1 / length(who); v[j + 2] <- v[j + 2] + day / length(who) }; v }
  for (grp in names(members)) for (d in days) {
    cell <- paste0(if (tag == "squad") "" else paste0(grp, "_"), sprintf("%03d", d)); first <- sub("[0-9]+$", "000", cell)
    x <- as.numeric(lev == cell); c0 <- contest1D(m0, x); put(paste(tag, grp, d, "mean", sep = "_"), c0$Estimate); put(paste(tag, grp, d, "mean_se", sep = "_"), c0$`Std. Error`)
    put(paste(tag, grp, d, "mean_df", sep = "_"), c0$df)
    o <- own(cell, d, members[[grp]]); put(paste(tag, grp, d, "own", sep = "_"), sum(o * est)); put(paste(tag, grp, d, "own_se", sep = "_"), sqrt(drop(t(o) %*% M %*% o)))
    if (d > 0) { o <- o - own(first, 0, members[[grp]]); put(paste(tag, grp, d, "own_change", sep = "_"), sum(o * est)); put(paste(tag, grp, d, "own_change_se", sep = "_"), sqrt(drop(t(o) %*% M %*% o)))
      c1 <- contest1D(m0, x - as.numeric(lev == first)); put(paste(tag, grp, d, "change", sep = "_"), c1$Estimate); put(paste(tag, grp, d, "change_se", sep = "_"), c1$`Std. Error`); put(paste(tag, grp, d, "change_df", sep = "_"), c1$df) }
  }
}
who <- split(rows$athlete, rows$group); who <- lapply(who, unique)
fit("squad", sprintf("%03d", rows$day), list(all = unique(rows$athlete)))
fit("groups", paste0(rows$group, "_", sprintf("%03d", rows$day)), who)
write.csv(data.frame(quantity = out$quantity, value = format(out$value, digits = 15, trim = TRUE)), "season-trend-expected.csv", row.names = FALSE, quote = FALSE)
