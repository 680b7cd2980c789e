using System.Globalization;
using Analytics.Simulation.BenchStudy.Carried;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.BenchStudy.Document;

/// <summary>Carried error against the error the generator puts in.</summary>
internal static class CarriedTable
{
    public static string Of(IReadOnlyList<BenchSquadOutcome> squads)
    {
        var table = new MarkdownTable("formula", "true error, %", "carried over true", "taken together over true", "observed over true", "interval of carried covers", "false alarm", "of these not explained", "own error of twice the carried found");
        for (var i = 0; i < CarriedCase.All.Count; i++)
        {
            var all = squads.Select(s => s.Carried[i]).ToList();
            var alarms = all.Where(c => c.Alarm).ToList();
            table.Row(CarriedCase.All[i].Name, (100 * CarriedCase.All[i].TrueShare).ToString("0.00", CultureInfo.InvariantCulture), Spread(all, c => c.Carried), Spread(all, c => c.Together), Spread(all, c => c.Observed),
                Rate.Of(all, c => c.Covers).ToString(), Rate.Of(all, c => c.Alarm).ToString(), Rate.Of(alarms, c => c.Unexplained) is { Asked: > 0 } r ? $"{r.Held} of {r.Asked}" : "–", Rate.Of(all, c => c.Found).ToString());
        }

        return table.ToString();
    }

    /// <summary>Root mean square over the squads, since variances add, and the SD.</summary>
    private static string Spread(List<CarriedOutcome> all, Func<CarriedOutcome, double> of)
    {
        var mean = all.Average(of);
        var deviation = Math.Sqrt(all.Sum(c => Math.Pow(of(c) - mean, 2)) / Math.Max(1, all.Count - 1));
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Sqrt(all.Average(c => of(c) * of(c))):0.000} (SD {deviation:0.000})");
    }
}
