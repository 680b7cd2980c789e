# How many tables a second: ICC(3,1) with its 95 % interval, by psych and by a function of base R without fitting a model.
#   Rscript icc_speed.R TABLES.csv N K        one row a table, its values row by row; prints name=value lines
a <- commandArgs(TRUE); n <- as.integer(a[2]); k <- as.integer(a[3])
rows <- as.matrix(read.csv(a[1], header = FALSE)); tables <- lapply(seq_len(nrow(rows)), function(i) matrix(rows[i, ], n, k, byrow = TRUE))
spent <- function(f) { t <- system.time(r <- f()); list(seconds = t[["user.self"]] + t[["sys.self"]], value = r) }

plain <- function(x) {
  n <- nrow(x); k <- ncol(x); r <- rowMeans(x); c <- colMeans(x); g <- mean(r)
  between <- k * sum((r - g)^2) / (n - 1)
  e <- x - r - rep(c - g, each = n); error <- sum(e^2) / ((n - 1) * (k - 1))
  f <- between / error; d <- (n - 1) * (k - 1)
  low <- f / qf(.975, n - 1, d); high <- f * qf(.975, d, n - 1)
  c((f - 1) / (f + k - 1), (low - 1) / (low + k - 1), (high - 1) / (high + k - 1))
}
invisible(lapply(tables[1:min(200, length(tables))], plain))
p <- spent(function() vapply(tables, plain, numeric(3)))
cat(sprintf("r=%s\nplain_seconds=%.6f\nplain_first=%s\n", getRversion(), p$seconds, paste(format(p$value[, 1], digits = 15), collapse = " ")))
if (requireNamespace("psych", quietly = TRUE)) {
  one <- function(x) unlist(psych::ICC(x, lmer = FALSE)$results[3, c("ICC", "lower bound", "upper bound")])
  m <- min(length(tables), 1000)   # psych is slow; its rate is that of the first tables
  invisible(one(tables[[1]]))
  q <- spent(function() vapply(tables[1:m], one, numeric(3)))
  cat(sprintf("psych=%s\npsych_tables=%d\npsych_seconds=%.6f\npsych_first=%s\n", packageVersion("psych"), m, q$seconds, paste(format(unname(q$value[, 1]), digits = 15), collapse = " ")))
}
