using System.Globalization;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.TestingDay;

/// <summary>What verdicts of a squad of this size were worth in simulated squads; the figures are those of docs/error-rates.md.</summary>
/// <param name="Players">Players of the simulated squad.</param>
/// <param name="DegreesOfFreedom">Of the typical error there.</param>
/// <param name="IntervalPercent">Players whose 95 % interval held their true change.</param>
/// <param name="FalseFlagPercent">Unchanged players with a clear verdict.</param>
internal sealed record MeasuredRates(int Players, double DegreesOfFreedom, double IntervalPercent, double FalseFlagPercent)
{
    private const string Resource = "measured-rates.csv";

    public static IReadOnlyList<MeasuredRates> All { get; } = Read();

    /// <summary>The simulated squad nearest in size and degrees of freedom, both by their ratio.</summary>
    public static MeasuredRates Nearest(int players, double degreesOfFreedom)
        => All.MinBy(r => Apart(r.Players, players) + Apart(r.DegreesOfFreedom, degreesOfFreedom))!;

    /// <summary>Two sentences for the methods of a report.</summary>
    /// <param name="players">Players tested.</param>
    /// <param name="errors">Errors of the measures shown; the one known least well is quoted.</param>
    public static string Sentence(int players, IReadOnlyList<MetricReliability> errors)
    {
        const string Rest = "The project's documentation lists every case and whole simulated seasons under \u201Cerror rates\u201D.";
        var degrees = errors.Where(e => e.HoldsDayToDayVariation && e.DegreesOfFreedom > 0).Select(e => e.DegreesOfFreedom).DefaultIfEmpty(0).Min();
        if (players == 0 || degrees == 0) return $"Nobody is judged on this day, so there is no rate to state. {Rest}";
        var near = Nearest(players, degrees);
        var here = double.IsPositiveInfinity(degrees) ? "taken as known" : Figures.Plain(degrees, 0);
        return $"In simulated squads of the nearest case ({near.Players} players, typical error with {Figures.Plain(near.DegreesOfFreedom, 0)} degrees of freedom; here {players}, and {here} at the least) "
            + $"{Figures.Plain(near.FalseFlagPercent, 1, "%")} of the unchanged players got a clear verdict, and the 95\u2009% interval held the true change of {Figures.Plain(near.IntervalPercent, 1, "%")} of the players. {Rest}";
    }

    // An error taken as known stands beside the best known one.
    private static double Apart(double a, double b) => Math.Abs(Math.Log(a / Math.Min(b, 1e6)));

    private static IReadOnlyList<MeasuredRates> Read()
    {
        using var stream = typeof(MeasuredRates).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The file {Resource} is missing from the assembly.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var heads = lines[0].Split(',').ToList();
        return [.. lines.Skip(1).Select(line =>
        {
            var cells = line.Split(',');
            double Cell(string head) => double.Parse(cells[heads.IndexOf(head)], CultureInfo.InvariantCulture);
            return new MeasuredRates((int)Cell("athletes"), Cell("degrees_of_freedom"), Cell("player_interval_percent"), Cell("unchanged_clear_percent"));
        })];
    }
}
