using Analytics.Simulation.BenchStudy.Carried;
using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;

namespace Analytics.Simulation.BenchStudy;

/// <summary>Everything one generated squad gives to the study.</summary>
/// <param name="Verdicts">By part of the squad, one a case of <see cref="CasesFor"/>.</param>
/// <param name="Carried">One a case of carried error.</param>
public sealed record BenchSquadOutcome(IReadOnlyDictionary<SquadChoice, IReadOnlyList<BenchOutcome>> Verdicts, IReadOnlyList<CarriedOutcome> Carried)
{
    /// <summary>All cases in the whole squad; in the others those of one shape less, for time.</summary>
    public static IReadOnlyList<BenchCase> CasesFor(SquadChoice choice) => choice == SquadChoice.Whole ? BenchCases.All : BenchCases.Few;

    public static BenchSquadOutcome Of(BenchSeason season) => new(
        SquadChoice.All.ToDictionary(c => c, c => BenchStudyRun.Judge(season, c, CasesFor(c))), CarriedOutcome.All(season));
}
