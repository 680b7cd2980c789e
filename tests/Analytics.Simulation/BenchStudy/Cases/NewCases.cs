using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.BenchStudy.Cases;

/// <summary>Sketches that rest on a lasting trait of the player, with an error of the day.</summary>
public static class NewCases
{
    // Spread between players of a group as the generator draws it.
    private static readonly (string Metric, Func<Player, double> Score) s_jump = ("cmj_height", p => (p.Baseline.JumpInches / p.Norm.JumpInches - 1) / 0.08);
    private static readonly (string Metric, Func<Player, double> Score) s_squat = ("back_squat_1rm", p => (p.Baseline.SquatPounds / p.Norm.SquatPounds - 1) / 0.09);

    public static IReadOnlyList<BenchCase> All { get; } =
    [
        .. from groups in new[] { false, true } from reliability in new[] { 0.9, 0.8, 0.6 } select Trait(reliability, 0, s_jump, groups),
        .. from like in new[] { s_jump, s_squat } from r in new[] { 0.5, 0.7 } from reliability in new[] { 0.9, 0.8, 0.6 } select Trait(reliability, r, like, like == s_squat),
        Trait(0.9, 0.9, s_jump, false),
        Trait(0.9, 0.95, s_jump, false),
        Between(1),
        Between(3),
    ];

    /// <summary>A trait with correlation <paramref name="r"/> to the truth behind a library metric, within groups.</summary>
    private static BenchCase Trait(double reliability, double r, (string Metric, Func<Player, double> Score) like, bool groups)
    {
        var name = FormattableString.Invariant($"Trait, reliability {reliability}{(r > 0 ? $", r = {r} with {MetricCatalogue.Get(like.Metric).Label}" : "")}{(groups ? ", groups differ" : "")}");
        var id = FormattableString.Invariant($"trait_{100 * reliability:0}_{100 * r:0}_{like.Metric}{(groups ? "_groups" : "")}");
        return new(name, TruthKind.New, season => Day(season, id, player => (groups ? GroupShift(season, id, player) : 0)
            + Math.Sqrt(reliability) * (r * like.Score(player) + Math.Sqrt(1 - r * r) * Draws.OfPlayer(season, id, player.Index)), Math.Sqrt(1 - reliability)))
        {
            // Near the library's own there is little to find, and nothing is required.
            IsRequired = reliability >= 0.8 && r <= 0.7,
            InEverySquad = r is 0 or 0.7 && (groups == (r > 0)),
            OwnShare = 1 - r * r,
            Icc = (season, who) => Icc(reliability, groups ? [.. season.Players.Where(p => who.Contains(p.Id)).Select(p => GroupShift(season, id, p))] : []),
        };
    }

    /// <summary>Linemen differ from the others by so many SD of a noise that is all there is within a group.</summary>
    private static BenchCase Between(double shift) => new(FormattableString.Invariant($"Linemen against others by {shift} SD, noise within a group"), TruthKind.BetweenGroups,
        season => Day(season, FormattableString.Invariant($"between_{shift}"), player => player.Norm.BoxInches <= 12 ? shift : 0, 1)) { InEverySquad = shift > 1 };

    private static MetricSketch Day(BenchSeason season, string id, Func<Player, double> lasting, double error)
        => Sketch.Day(id, "Trait", "1", Direction.Higher, (1, 1000), day => 100 + 10 * (lasting(season.Player(day)) + error * Draws.OfDay(season, id + " error", day))).Patient();

    private static double GroupShift(BenchSeason season, string id, Player player) => Draws.OfPlayer(season, id + " group", 10_000 + GroupNorm.All.ToList().IndexOf(player.Norm));

    private static double Icc(double reliability, double[] shifts)
    {
        if (shifts.Length < 2) return reliability;
        var mean = shifts.Average();
        var between = shifts.Sum(s => (s - mean) * (s - mean)) / (shifts.Length - 1);
        return (between + reliability) / (between + 1);
    }
}
