using Analytics.Metrics.Bench;
using Analytics.Notebooks.Blocks;

namespace Analytics.Notebooks.Bench;

/// <summary>How the bench judges, and what it does not say.</summary>
internal static class BenchMethods
{
    public static Block Of(BenchContext bench) => new Together(
        new Section("How the numbers came about", "", new Folded("Methods and sources", new Definitions(
            ("Verdict", bench.Squad.Rule.Statement),
            ("Does it return", "Intraclass correlation: of retest days ICC(3,1); of the mean of the attempts of one day ICC(1,k), where there is no retest; of two occasions weeks apart ICC(3,1), where there is neither. Intervals by the F law. [shroutfleiss1979]"),
            ("What it says that others do not", "Values less the mean of the group, in logarithms where all are above 0. The two library metrics that give most of it by least squares, from the means of both retest days; of what remains, the part that returns on the second day, as a share of all that returns. Players drawn anew 2,000 times, percentiles; the search for the two is not repeated in them. [efrontibshirani1993]"),
            ("One player", "With each player left out in turn the ICC and the share of its own are worked out again, the interval of the share moved with it; where that changes the verdict it is said. The two library metrics and the rank correlations stay."),
            ("Body mass", "Slope of the logarithm of the value on the logarithm of body mass over the squad; players drawn anew, BCa. [efron1987] [oba2014]"),
            ("Far values", "More than 3.5 robust spreads from the middle of the group, the spread pooled over groups of four and more. [iglewiczhoaglin1993]"),
            ("Error from inputs", "Every input comes out otherwise by its typical error between days, normal, all attempts of a day alike, and the formula is asked again: 30 players, 60 draws each. Inputs are found by changing them. [jcgm101]"),
            ("Change, error, what matters", "As in the season report. The change in SD of the changes has its exact interval by the noncentral t law. [cummingfinch2001]"),
            ("Weak points", "Ordered by a weight of ours, no source; they are meant to start a talk, not to end it."),
            ("How often this is wrong", "Measured on simulated squads with known truth; see the bench study of the project's documentation.")))),
        new Cautions(
            "A trial metric is one person's idea. Nobody has reviewed it; do not pick, rank or clear players by it.",
            "Tried on one squad: what holds here may not hold elsewhere. Try it on another season before it is promoted.",
            "Trying many ideas on one season finds one that looks good by chance. Write down how many were tried."));
}
