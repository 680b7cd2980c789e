using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.ErrorRates.Grid.Document;

namespace Analytics.Simulation.BenchStudy.Document;

/// <summary>Do the 95 % intervals of the own share and of the ICC hold the truth?</summary>
internal static class IntervalTable
{
    public static string Of(IReadOnlyList<BenchSquadOutcome> squads)
    {
        var table = new MarkdownTable("sketch", "own share, true %", "middle estimate, %", "covers", "too low", "too high", "ICC covers");
        for (var i = 0; i < BenchCases.All.Count; i++)
        {
            var what = BenchCases.All[i];
            var outcomes = squads.Select(s => s.Verdicts[SquadChoice.Whole][i]).ToList();
            var icc = Rate.Of(outcomes.Where(o => o is { TrueIcc: not null, Icc: not null }), o => o.Icc!.Value.Contains(o.TrueIcc!.Value));
            var own = outcomes.Where(o => o.Own is not null).ToList();
            if (what.Kind == TruthKind.New && what.OwnShare is { } truth)
                table.Row(what.Name, Cells.Percent(truth), own.Count > 0 ? Cells.Percent(Middle([.. own.Select(o => o.OwnShare!.Value)])) : "–", Rate.Of(own, o => o.Own!.Value.Contains(truth)).ToString(),
                    Cells.Percent(Rate.Of(own, o => o.Own!.Value.High < truth).Share), Cells.Percent(Rate.Of(own, o => o.Own!.Value.Low > truth).Share), icc.ToString());
            else if (icc.Asked > 0)
                table.Row(what.Name, "–", "–", "–", "–", "–", icc.ToString());
        }

        return table.ToString();
    }

    /// <summary>Coverage of the interval of the own share over all traits and squads, per cent.</summary>
    public static string Coverage(IReadOnlyList<BenchSquadOutcome> squads) => Cells.Percent(Rate.Of(
        squads.SelectMany(s => s.Verdicts[SquadChoice.Whole].Zip(BenchCases.All)).Where(o => o.Second.Kind == TruthKind.New && o.First.Own is not null), o => o.First.Own!.Value.Contains(o.Second.OwnShare!.Value)).Share);

    private static double Middle(List<double> values)
    {
        values.Sort();
        return (values[(values.Count - 1) / 2] + values[values.Count / 2]) / 2;
    }
}
