# Processor time of lmer, without a summary, for y ~ x + (x | g) by REML. Arguments: file with columns y, x, g; budget (s).
suppressPackageStartupMessages(library(lme4))
a <- commandArgs(TRUE)
d <- read.csv(a[1]); names(d) <- c("y", "x", "g"); d$g <- factor(d$g)
budget <- as.numeric(a[2])
used <- function() sum(proc.time()[1:2])
seconds <- function(control) {
  m <- lmer(y ~ x + (x | g), d, control = control)
  count <- 0; start <- used()
  while (used() - start < budget) { count <- count + 1; m <- lmer(y ~ x + (x | g), d, control = control) }
  c((used() - start) / count, -2 * as.numeric(logLik(m)))
}
plain <- seconds(lmerControl())
bare <- seconds(lmerControl(calc.derivs = FALSE))
cat(sprintf('{"version":"R %s, lme4 %s","seconds":%.9f,"leastSeconds":%.9f,"criterion":%.9f}\n',
  getRversion(), packageVersion("lme4"), plain[1], bare[1], plain[2]))
