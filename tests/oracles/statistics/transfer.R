# Makes transfer-expected.csv from transfer-sixteen.csv and transfer-background.csv beside it. Base R only; everything by refitting lm() with an athlete left out.
#   Rscript transfer.R        (run in this folder; made with R 4.2.2)
out <- data.frame(case = character(), quantity = character(), value = numeric())
put <- function(case, ...) { v <- c(...); out <<- rbind(out, data.frame(case = case, quantity = names(v), value = unname(v))) }
se <- function(j) { n <- length(j); sqrt((n - 1) / n * sum((j - mean(j))^2)) }
d <- read.csv("transfer-sixteen.csv")
both <- d[!is.na(d$x) & !is.na(d$y), ]
both <- both[both$athlete %in% names(which(table(both$athlete) > 1)), ]
who <- unique(both$athlete)

within <- function(b, days) {
  rest <- function(v) if (days) resid(lm(v ~ factor(athlete) + factor(time), b)) else resid(lm(v ~ factor(athlete), b))
  a <- rest(b$x); c <- rest(b$y); sum(a * c) / sqrt(sum(a^2) * sum(c^2))
}
for (days in c(FALSE, TRUE)) {
  r <- within(both, days); s <- se(sapply(who, function(w) atanh(within(both[both$athlete != w, ], days))))
  t <- qt(.975, length(who) - 1) * s
  put(if (days) "beyond_calendar" else "within", r = r, error_z = s, low = tanh(atanh(r) - t), high = tanh(atanh(r) + t),
      p = 2 * pt(-abs(atanh(r)) / s, length(who) - 1), athletes = length(who), pairs = nrow(both))
}

gains <- function(case, precise) {
  u <- d; u$t <- (u$time - min(u$time)) / (max(u$time) - min(u$time))
  if (!precise) { u$px <- 1; u$py <- 1 }
  span <- function(v) sapply(unique(u$athlete), function(w) { t <- u$t[u$athlete == w & !is.na(u[[v]])]; if (length(t) < 2) 0 else diff(range(t)) })
  used <- unique(u$athlete)[span("x") >= .5 & span("y") >= .5]
  # Days' effects, then each athlete's weighted line; rests and the matrix that makes them in values times root precision.
  fit <- function(v, p, out) {
    a <- u[!is.na(u[[v]]) & !(u$athlete %in% out), ]; a <- a[a$athlete %in% names(which(table(a$athlete) > 1)), ]
    f <- lm(a[[v]] ~ factor(athlete) + factor(time), a, weights = a[[p]])
    b <- c(0, coef(f)[grep("time", names(coef(f)))]); names(b) <- levels(factor(a$time))
    lapply(setNames(setdiff(used, out), setdiff(used, out)), function(w) {
      o <- a[a$athlete == w, ]; o <- o[order(o$t), ]; z <- o[[v]] - b[as.character(o$time)]
      m <- sqrt(o[[p]]) * cbind(1, o$t); h <- m %*% solve(t(m) %*% m) %*% t(m)
      cf <- solve(t(m) %*% m) %*% t(m); list(g = sum(cf[2, ] * sqrt(o[[p]]) * z), rest = as.vector(sqrt(o[[p]]) * z - h %*% (sqrt(o[[p]]) * z)),
        maker = diag(nrow(o)) - h, a = cf[2, ] * sqrt(o[[p]]), time = o$time, p = o[[p]])
    })
  }
  moments <- function(out, w) {
    X <- fit("x", "px", out); Y <- fit("y", "py", out); id <- setdiff(used, out); n <- length(id); k <- (n - 1) / n
    w <- w[id]; W <- sum(w); gx <- sapply(X, `[[`, "g"); gy <- sapply(Y, `[[`, "g")
    dx <- gx - sum(w * gx) / W; dy <- gy - sum(w * gy) / W; D <- W - sum(w^2) / W
    common <- lapply(setNames(id, id), function(i) { s <- intersect(X[[i]]$time, Y[[i]]$time); list(x = match(s, X[[i]]$time), y = match(s, Y[[i]]$time)) })
    cxy <- sapply(id, function(i) { c <- common[[i]]; sum(X[[i]]$a[c$x] * Y[[i]]$a[c$y]) })
    fxy <- sapply(id, function(i) { c <- common[[i]]; r <- sqrt(X[[i]]$p[c$x] * Y[[i]]$p[c$y])
      sum((X[[i]]$maker[c$x, c$x, drop = FALSE] * Y[[i]]$maker[c$y, c$y, drop = FALSE]) %*% r) })
    exy <- sum(sapply(id, function(i) { c <- common[[i]]; sum(X[[i]]$rest[c$x] * Y[[i]]$rest[c$y]) }))
    own <- function(Z) list(e = sum(sapply(Z, function(z) sum(z$rest^2))), f = sum(sapply(Z, function(z) length(z$rest) - 2)), q = sapply(Z, function(z) sum(z$a^2 / z$p)))
    ox <- own(X); oy <- own(Y)
    c(xx = sum(w * dx^2) / D, yy = sum(w * dy^2) / D, xy = sum(w * dx * dy) / D, exx = ox$e / (ox$f * k) * sum(w * ox$q) / W,
      eyy = oy$e / (oy$f * k) * sum(w * oy$q) / W, exy = exy / (sum(fxy) * k) * sum(w * cxy) / W, fx = ox$f, fy = oy$f, fxy = sum(fxy),
      setNames(ox$q, paste0("qx", id)), setNames(oy$q, paste0("qy", id)))
  }
  first <- moments(character(), setNames(rep(1, length(used)), used))
  qx <- first[paste0("qx", used)]; qy <- first[paste0("qy", used)]
  tx <- max(0, first["xx"] - first["exx"]); ty <- max(0, first["yy"] - first["eyy"])
  w <- setNames(1 / ((tx + first["exx"] / mean(qx) * qx) * (ty + first["eyy"] / mean(qy) * qy)), used)
  m <- moments(character(), w); clean <- function(m) unname((m["xy"] - m["exy"]) / sqrt(m["xx"] * m["yy"]))
  r <- clean(m); n <- length(used); s <- se(sapply(used, function(o) atanh(clean(moments(o, w))))); t <- qt(.975, n - 1) * s
  rx <- unname(1 - m["exx"] / m["xx"]); ry <- unname(1 - m["eyy"] / m["yy"])
  put(case, r = r, raw = unname(m["xy"] / sqrt(m["xx"] * m["yy"])), from_errors = unname(m["exy"] / sqrt(m["xx"] * m["yy"])),
      of_errors = unname(m["exy"] / sqrt(m["exx"] * m["eyy"])), error_z = s, low = tanh(atanh(r) - t), high = tanh(atanh(r) + t),
      p = 2 * pt(-abs(atanh(r)) / s, n - 1), reliability_x = rx, reliability_y = ry, spread_px = unname(pf(m["xx"] / m["exx"], n - 1, m["fx"], lower.tail = FALSE)),
      spread_py = unname(pf(m["yy"] / m["eyy"], n - 1, m["fy"], lower.tail = FALSE)), freedom = unname(m["fxy"]), athletes = n, true_r = r / sqrt(rx * ry))
}
gains("gains", FALSE)
gains("gains_precise", TRUE)

# Partial correlation and slope with scatter, on rows complete in all.
e <- read.csv("transfer-background.csv")
a <- resid(lm(x ~ c1 + c2 + c3, e)); b <- resid(lm(y ~ c1 + c2 + c3, e)); r <- cor(a, b); z <- qnorm(.975) / sqrt(nrow(e) - 3 - 3)
fx <- fitted(lm(x ~ c1 + c2 + c3, e)); fy <- fitted(lm(y ~ c1 + c2 + c3, e))
put("partial", r = r, low = tanh(atanh(r) - z), high = tanh(atanh(r) + z), from_others = cov(fx, fy) / sd(e$x) / sd(e$y), whole = cor(e$x, e$y))
slope <- function(i, v, c) (cov(e$x[i], e$y[i]) - c) / (var(e$x[i]) - v)
n <- nrow(e); s <- se(sapply(1:n, function(o) slope(-o, 8, 1.5))); b <- slope(1:n, 8, 1.5)
put("scatter", slope = b, error = s, low = b - qt(.975, n - 1) * s, high = b + qt(.975, n - 1) * s, spread_p = pf(var(e$x) / 8, n - 1, 15, lower.tail = FALSE),
    spread_p_known = pchisq(var(e$x) / 8 * (n - 1), n - 1, lower.tail = FALSE), true_sd = sqrt(var(e$x) - 8))
out$value <- sprintf("%.17g", out$value)
write.csv(out, "transfer-expected.csv", row.names = FALSE, quote = FALSE)
