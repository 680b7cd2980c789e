using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Charts;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.TestingDay;

/// <summary>The library's directions and verdicts as charts take them.</summary>
internal static class Directions
{
    public static Better Of(Metric metric) => metric.Better switch
    {
        Direction.Higher => Better.Higher,
        Direction.Lower => Better.Lower,
        _ => Better.Neither,
    };

    public static ChangeVerdict Of(Metric metric, Verdict verdict, bool errorKnown) => verdict switch
    {
        _ when !errorKnown => ChangeVerdict.NoErrorKnown,
        Verdict.ClearGain => metric.Better == Direction.Neither ? ChangeVerdict.ClearlyUp : ChangeVerdict.ClearGain,
        Verdict.ClearLoss => metric.Better == Direction.Neither ? ChangeVerdict.ClearlyDown : ChangeVerdict.ClearLoss,
        Verdict.TooSmallToMatter => ChangeVerdict.TooSmallToMatter,
        _ => ChangeVerdict.CannotTellYet,
    };
}
