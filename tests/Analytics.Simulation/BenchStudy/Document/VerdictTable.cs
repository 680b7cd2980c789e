using Analytics.Metrics.Bench;
using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.BenchStudy.Document;

/// <summary>Shares of the verdicts, a line a sketch.</summary>
internal static class VerdictTable
{
    public static string Of(IReadOnlyList<BenchSquadOutcome> squads, SquadChoice choice, params TruthKind[] kinds)
    {
        var table = new MarkdownTable("sketch", "no more than noise", "nothing new", "cannot tell yet", "says something new");
        var cases = BenchSquadOutcome.CasesFor(choice);
        for (var i = 0; i < cases.Count; i++)
        {
            if (!kinds.Contains(cases[i].Kind)) continue;
            string Cell(BenchVerdict verdict) => Rate(squads, choice, i, v => v == verdict).ToString();
            table.Row(cases[i].Name, Cell(BenchVerdict.Noise), Cell(BenchVerdict.NothingNew), Cell(BenchVerdict.CannotTellYet), Cell(BenchVerdict.SaysSomethingNew));
        }

        return table.ToString();
    }

    /// <summary>How often a verdict is among those asked for.</summary>
    public static Rate Rate(IReadOnlyList<BenchSquadOutcome> squads, SquadChoice choice, int of, Func<BenchVerdict, bool> held)
        => Document.Rate.Of(squads, s => held(s.Verdicts[choice][of].Verdict));

    /// <summary>The lowest rate over the required sketches of a kind, with the sketch.</summary>
    public static (BenchCase Case, Rate Rate) Lowest(IReadOnlyList<BenchSquadOutcome> squads, SquadChoice choice, TruthKind kind, Func<BenchVerdict, bool> held)
        => BenchSquadOutcome.CasesFor(choice).Select((c, i) => (Case: c, Index: i)).Where(c => c.Case.Kind == kind && c.Case.IsRequired)
            .Select(c => (c.Case, Rate: Rate(squads, choice, c.Index, held))).MinBy(c => c.Rate.Share);

    /// <summary>All required sketches of a kind together.</summary>
    public static Rate Together(IReadOnlyList<BenchSquadOutcome> squads, SquadChoice choice, TruthKind kind, Func<BenchVerdict, bool> held)
        => Document.Rate.Of(squads.SelectMany(s => s.Verdicts[choice].Zip(BenchSquadOutcome.CasesFor(choice)).Where(v => v.Second.Kind == kind && v.Second.IsRequired)), v => held(v.First.Verdict));
}
