# Makes own-share.csv (invented) and own-share-expected.csv: what a test says that one or two others do not, by residuals of lm() and cov(). Base R only.
#   Rscript own-share.R       (run in this folder; made with R 4.2.2)
set.seed(7)
n <- 18; group <- rep(c("backs", "line", "mids"), length.out = n); shift <- c(backs = 0, line = 3, mids = 1.5)[group]
a <- rnorm(n, 50, 4) + shift; b <- rnorm(n, 20, 3) - shift; own <- rnorm(n, 0, 2.5)
d <- data.frame(athlete = sprintf("p%02d", 1:n), group = group)
for (t in 1:2) {
  d[[paste0("y", t)]] <- round(0.6 * a - 0.4 * b + own + rnorm(n, 0, 1), 2)
  d[[paste0("a", t)]] <- round(a + rnorm(n, 0, 1), 2); d[[paste0("b", t)]] <- round(b + rnorm(n, 0, 1), 2)
}
write.csv(d, "own-share.csv", row.names = FALSE, quote = FALSE)
out <- data.frame(case = character(), quantity = character(), value = numeric())
put <- function(case, ...) { v <- c(...); out <<- rbind(out, data.frame(case = case, quantity = names(v), value = unname(v))) }
share <- function(d, others, groups) {
  m <- data.frame(y = (d$y1 + d$y2) / 2); for (o in others) m[[o]] <- (d[[paste0(o, 1)]] + d[[paste0(o, 2)]]) / 2
  f <- lm(y ~ ., m); b <- coef(f)[others]
  e <- lapply(1:2, function(t) d[[paste0("y", t)]] - as.vector(as.matrix(d[paste0(others, t)]) %*% b))
  df <- nrow(d) - groups; k <- length(others); spent <- df / (df - k)
  c(share = cov(e[[1]], e[[2]]) / cov(d$y1, d$y2) * spent, repeats = cor(e[[1]], e[[2]]), from_others = 1 - sum(resid(f)^2) / sum((m$y - mean(m$y))^2) * spent)
}
centred <- d; for (v in names(d)[-(1:2)]) centred[[v]] <- resid(lm(d[[v]] ~ d$group))
for (case in list(list("one", d, "a", 1), list("two", d, c("a", "b"), 1), list("two_in_groups", centred, c("a", "b"), 3))) {
  put(case[[1]], share(case[[2]], case[[3]], case[[4]]))
  put(case[[1]], without_first = unname(share(case[[2]][-1, ], case[[3]], case[[4]])["share"]), without_last = unname(share(case[[2]][-n, ], case[[3]], case[[4]])["share"]))
}
# With one group the share given by the others is the adjusted R squared.
stopifnot(all.equal(summary(lm((y1 + y2) ~ I(a1 + a2) + I(b1 + b2), d))$adj.r.squared, out$value[out$case == "two" & out$quantity == "from_others"]))
out$value <- sprintf("%.17g", out$value)
write.csv(out, "own-share-expected.csv", row.names = FALSE, quote = FALSE)
