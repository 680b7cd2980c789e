using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Verdicts in table cells: the words of the charts, kept on one line, and their tone.</summary>
internal static class Verdicts
{
    public static (string Text, Tone Tone) Words(Metric metric, Verdict verdict, bool errorKnown)
    {
        var said = Directions.Of(metric, verdict, errorKnown);
        return (said.Words().Replace(' ', '\u00a0'), said.Tone());
    }
}
