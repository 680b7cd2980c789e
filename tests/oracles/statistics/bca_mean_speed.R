# Processor time of a BCa interval of a mean with boot and boot.ci, jackknife influence. Arguments: resamples, budget (s), values.
suppressPackageStartupMessages(library(boot))
a <- as.numeric(commandArgs(TRUE))
values <- a[-(1:2)]
interval <- function(seed) {
  set.seed(seed)
  b <- boot(values, function(d, i) mean(d[i]), a[1])
  boot.ci(b, type = "bca", L = empinf(b, type = "jack"))$bca[4:5]
}
used <- function() sum(proc.time()[1:2])
limits <- interval(0)
count <- 0
start <- used()
while (used() - start < a[2]) {
  count <- count + 1
  limits <- interval(count)
}
cat(sprintf('{"version":"R %s, boot %s","seconds":%.9f,"low":%.9f,"high":%.9f}\n',
  getRversion(), packageVersion("boot"), (used() - start) / count, limits[1], limits[2]))
