using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Quantities;
using Analytics.Statistics.Summaries;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Body mass against speed at ten yards, with curves of equal momentum: two ways to bring the same.</summary>
internal static class MomentumBlock
{
    private const int Fewest = 5;
    private const int CurveSteps = 24;
    private static readonly double[] Shares = [0.1, 0.5, 0.9];

    public static Block Of(DayContext day)
    {
        const string title = "What players carry into contact";
        if (day.Metric("momentum_10yd") is not { } momentum) return new Section(title, "No metric of momentum is known.");
        var players = day.Standing(momentum).Day.Values
            .Select(v => (Value: v, Mass: day.DayOf(v.AthleteId)?.BodyMass)).Where(p => p.Mass is { Kilograms: > 0 })
            .Select(p => new Player(p.Value.AthleteId, day.Athlete(p.Value.AthleteId).Group, p.Mass!.Value.Kilograms, p.Value.Value / p.Mass.Value.Kilograms)).ToList();
        if (players.Count < Fewest)
            return new Section(title, "", new Note($"Fewer than {Words.Count(Fewest)} players have both a body mass and a timed sprint today."));
        return new Section(title,
            "Momentum is body mass times speed, here 10 yards from the start. Along a thin curve it is equal: a lighter player needs more speed for the same.",
            Chart(day, momentum, players));
    }

    private static ScatterPlot Chart(DayContext day, Metric momentum, IReadOnlyList<Player> players)
    {
        var mass = day.Unit(day.Metric("body_mass") ?? momentum);
        var speedUnit = Speed.Units.FirstOrDefault(u => u.Symbol == day.Season.Settings.SpeedUnit) ?? Speed.Units[0];
        var groups = players.GroupBy(p => p.Group).Where(g => g.Count() > 1).Select(g => new ScatterPoint(g.Key,
            mass.Of(Quantiles.Median([.. g.Select(p => p.Kilograms)])), Quantiles.Median([.. g.Select(p => p.MetresPerSecond)]) / speedUnit.ToSi, "middle of a group", true));
        var standing = day.Standing(momentum);
        var error = standing.Reliability.Error is null ? "No error is known for it." : $"Typical error {ErrorText.Of(standing.Reliability, day.Unit(momentum))}.";
        return new ScatterPlot
        {
            Title = "Body mass and speed at 10 yards",
            TitleNote = Words.Scale(standing.Day.Series),
            Across = new Axis("body mass", mass.Symbol, mass.Decimals),
            Up = new Axis("speed at 10 yards", speedUnit.Symbol, 1),
            Points = [.. players.Select(p => new ScatterPoint(day.Name(p.Id), mass.Of(p.Kilograms), p.MetresPerSecond / speedUnit.ToSi, "a player")), .. groups],
            References = [.. Levels(players).Select(level => EqualMomentum(level, players, mass.PerCatalogueUnit, speedUnit.ToSi))],
            Remark = $"Momentum from the fitted sprint curve. {error} It describes a body in motion, not how hard to hit; technique with the head up comes first.",
        };
    }

    /// <summary>Three round levels across the squad.</summary>
    private static IEnumerable<double> Levels(IReadOnlyList<Player> players)
    {
        double[] carried = [.. players.Select(p => p.Kilograms * p.MetresPerSecond)];
        return Shares.Select(q => Math.Round(Quantiles.Type7(carried, q) / 50) * 50).Where(v => v > 0).Distinct();
    }

    private static Curve EqualMomentum(double level, IReadOnlyList<Player> players, double massPerKilogram, double metresPerSecondPerUnit)
    {
        var (low, high) = (players.Min(p => p.Kilograms), players.Max(p => p.Kilograms));
        return new Curve($"{Figures.Plain(level, 0, "kg\u00b7m/s")}", [.. Enumerable.Range(0, CurveSteps + 1).Select(i =>
        {
            var kilograms = low + (high - low) * i / CurveSteps;
            return (kilograms * massPerKilogram, level / kilograms / metresPerSecondPerUnit);
        })]);
    }

    private sealed record Player(string Id, string Group, double Kilograms, double MetresPerSecond);
}
