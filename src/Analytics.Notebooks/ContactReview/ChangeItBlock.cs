using System.Globalization;
using Analytics.Metrics.Contact;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Quantities;

namespace Analytics.Notebooks.ContactReview;

/// <summary>What would change time and momentum at the gap of the drill, from each player's own split times.</summary>
internal static class ChangeItBlock
{
    private const string Title = "What would change it";
    private const string TenPounds = "10 lb more", Kilogram = "1 kg more", Speed = "0.1 m/s more top speed", Constant = "0.1 s shorter time constant";

    public static Block Of(ReviewDay day)
    {
        if (Gap(day) is not { } gap) return new Section(Title, "", new Note("The drills have no gap written down, so split times cannot be read at the place of contact. Fill in gap_yd or gap_m of contact.csv."));
        var pools = SplitErrorPools.Of(day.Season.Days.SelectMany(d => d.Athletes).SelectMany(a => a.Of<SprintTrial>()));
        var all = day.Players.Select(p => (Player: p, Run: Run(day, p.Athlete.Id, pools))).ToList();
        var known = all.Where(a => a.Run is not null).Select(a => (a.Player, Model: a.Run!, Over: a.Run!.Over(gap))).ToList();
        if (known.Count == 0) return new Section(Title, "", new Note("No player on film has sprint splits that give a curve and a body mass."));
        var pounds = day.Season.Settings.MassUnit == "lb";
        var mass = pounds ? TenPounds : Kilogram;
        var table = DataTable.Of(string.Create(CultureInfo.InvariantCulture, $"From split times, at the end of {gap.Metres:0.##} m ({gap.Yards:0.#} yd)"), known, t => t
            .Text("Player", k => new Cell(k.Player.Athlete.Name, k.Player.Athlete.Position))
            .Numeric("Time by splits", "s", k => Read(k.Over.Time, 2))
            .Numeric("Momentum by splits", "kg\u00b7m/s", k => Read(k.Over.Momentum, 0))
            .Numeric($"With {mass}", "kg\u00b7m/s", k => Momentum(k.Over, mass))
            .Numeric("With 0.1 m/s more top speed", "kg\u00b7m/s", k => Momentum(k.Over, Speed))
            .Numeric("With 0.1 s shorter time constant", "kg\u00b7m/s", k => Momentum(k.Over, Constant)));
        List<Block> blocks = [table, .. known.Select(k => k.Model.Caveat?.Text).OfType<string>().Distinct().Select(c => new Note(c)),
            new Note("One change at a time, everything else held: nobody promises that a heavier player stays as fast. At so short a gap the time constant (the first steps) counts most, top speed hardly. The changes belong to the fitted curve; their own error is not shown. Small print: change of the time.")];
        if (known.Count < all.Count) blocks.Add(new Note($"Without usable splits or body mass: {string.Join(", ", all.Where(a => a.Run is null).Select(a => a.Player.Athlete.Name))}."));
        return new Section(Title, "Full effort straight ahead from rest by the player's own splits; on film he may start slower, or hold back before contact.", [.. blocks]);
    }

    internal static Length? Gap(ReviewDay day)
    {
        var gaps = day.Repetitions.Select(r => r.Trial.Gap).OfType<Length>().GroupBy(g => Math.Round(g.Metres, 2)).OrderByDescending(g => g.Count()).FirstOrDefault();
        return gaps?.First();
    }

    // The fastest run of the latest day with splits, with the timing error of the squad.
    private static ApproachModel? Run(ReviewDay day, string id, SplitErrorPools pools)
    {
        foreach (var tested in day.Season.Days.Where(d => d.Date <= day.Date).OrderByDescending(d => d.Date))
        {
            if (tested.Athletes.FirstOrDefault(a => a.AthleteId == id) is not { } athlete || athlete.BodyMass is not { } mass) continue;
            var readings = athlete.Of<SprintTrial>().Where(s => s.Timing != TimingMethod.Hand).Select(s => pools.Apply(SprintReading.Of(s))).Where(r => ApproachModel.WhyNot(r) is null);
            if (readings.MinBy(r => r.Fit.Curve!.FromRest.TimeTo(Length.FromYards(10)).Seconds) is { } best) return ApproachModel.Of(best, mass);
        }
        return null;
    }

    // Limits in small print under the figure: side by side they do not fit on a phone.
    private static Cell Read(Statistics.Estimate estimate, int decimals)
        => new(Figures.Plain(estimate.Value, decimals), estimate.Interval is { } i ? Figures.Limits(i.Low, i.High, decimals) : "no error known");

    private static Cell Momentum(GapApproach over, string change)
        => over.Sensitivities.FirstOrDefault(s => s.Change == change) is { } s
            ? new Cell(Figures.Signed(s.Momentum.KilogramMetresPerSecond, 1), s.Time == Duration.Zero ? "" : Figures.Signed(1000 * s.Time.Seconds, 0, "ms"))
            : Cell.Missing;
}
