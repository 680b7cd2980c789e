using Analytics.Metrics.Bench.Inputs;
using Analytics.Simulation.BenchStudy.Squads;

namespace Analytics.Simulation.BenchStudy.Carried;

/// <summary>What the bench said of carried error in one squad.</summary>
/// <param name="Carried">Carried over true error, inputs taken by themselves.</param>
/// <param name="Together">The same with inputs taken together.</param>
/// <param name="Covers">Whether the interval of the carried error holds the true one.</param>
/// <param name="Observed">Observed over true error.</param>
/// <param name="Alarm">Whether a large disagreement is called although nothing else adds error.</param>
/// <param name="Unexplained">Whether it then stays after taking the inputs' errors together.</param>
/// <param name="Found">Whether it is called when an error of its own is added.</param>
public sealed record CarriedOutcome(double Carried, double Together, bool Covers, double Observed, bool Alarm, bool Unexplained, bool Found)
{
    public static IReadOnlyList<CarriedOutcome> All(BenchSeason season)
    {
        var squad = season.Squad(SquadChoice.Whole);
        return [.. CarriedCase.All.Select(what =>
        {
            var card = squad.Judge(what.Sketch(season, 0));
            var error = card.Error;
            if (error.ByThemselves is not { } alone || error.Together is not { } together || error.Observed is not { } seen || card.Quality.Level is not { } level)
                throw new InvalidOperationException($"{what.Name}: no carried error in the squad of seed {season.Seed}: {error.Explanation}");
            var truth = what.TrueShare * level;
            return new CarriedOutcome(alone / truth, together / truth, error.ByThemselvesInterval!.Value.Contains(truth), seen / truth, error.IsLarge, error is { IsLarge: true, IsExplained: false },
                squad.Judge(what.Sketch(season, CarriedCase.Added)).Error.IsLarge);
        })];
    }
}
