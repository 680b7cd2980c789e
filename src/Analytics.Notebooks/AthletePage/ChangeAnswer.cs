using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The first answer: what changed for real.</summary>
internal static class ChangeAnswer
{
    private const int MostNamed = 2, MostGains = 3;

    public static Answer Of(PlayerPage page)
    {
        var judged = page.Measures.Where(m => m.IsJudged).ToList();
        if (judged.Count == 0) return Nothing(page);
        var gains = judged.Where(m => m.Change!.Verdict == Verdict.ClearGain).ToList();
        var losses = judged.Where(m => m.Change!.Verdict == Verdict.ClearLoss).ToList();
        List<string> said = [];
        if (gains.Count > 0) said.Add(gains.Count > MostGains ? $"{Words.Capital(Words.Count(gains.Count))} of {Words.Count(judged.Count)} tests are better for real." : $"Better for real: {Names(gains)}.");
        if (losses.Count > 0) said.Add($"{(gains.Count > 0 ? "Lower" : "You are lower")} by more than test error: {Names(losses)}.");
        if (said.Count == 0) return new(StillWords(judged), Undecided(judged, named: false) + " " + WhatHelps(judged), Tone.Muted);

        var clear = losses.Concat(gains).ToList();
        var numbers = string.Join("; ", clear.Take(MostGains).Select(m => $"{PageWords.Short(m.Metric)} {m.Unit.ChangeText(m.Change!.Difference, m.Change.Interval)}"));
        var health = losses.Count > 0 ? " Check health, sleep and the testing day first." : "";
        var rest = judged.Except(gains).Except(losses).ToList();
        return new(string.Join(" ", said), $"{Words.Capital(numbers)}{(clear.Count > MostGains ? "; the others below" : "")}, since {Since(page, judged)}.{health}{(rest.Count > 0 ? " " + Undecided(rest, named: true) : "")} {Chance(judged)}",
            losses.Count > gains.Count ? Tone.Loss : gains.Count > 0 ? Tone.Gain : Tone.Loss);
    }

    private static Answer Nothing(PlayerPage page)
    {
        if (page.Tested is null) return new("What changed: no test yet.", "Your changes show from your second testing day on.", Tone.Muted);
        if (page.Measures.All(m => m.Before is null))
            return new("What changed: nothing to compare with yet.", "None of these tests was done on an earlier day that is compared with. The next testing day will show.", Tone.Muted);
        return new("What changed: cannot tell yet.", "No test with a known error was done the same way on both days. Two testing days within one week would tell how far each test wobbles.", Tone.Muted);
    }

    private static string StillWords(List<PageMeasure> judged)
        => judged.TrueForAll(m => m.Change!.Verdict == Verdict.TooSmallToMatter) ? "You held your level: no change that matters." : "What changed: the tests cannot tell yet.";

    private static string Undecided(List<PageMeasure> measures, bool named)
    {
        var small = measures.Where(m => m.Change!.Verdict == Verdict.TooSmallToMatter).ToList();
        var open = measures.Except(small).ToList();
        List<string> parts = [];
        if (open.Count > 0) parts.Add(named ? $"For {(open.Count > MostNamed ? $"the other {Words.Count(open.Count)} tests" : Names(open))} it is too early to tell." : $"{Words.Capital(Names(open))}: each change may be test error.");
        if (small.Count > 0) parts.Add($"{Words.Capital(Names(small))}: too small to matter.");
        return string.Join(" ", parts);
    }

    private static string WhatHelps(List<PageMeasure> judged)
        => judged.Exists(m => m.Change!.Verdict == Verdict.CannotTellYet) ? "More training time, or testing twice within a week, may tell." : "";

    // At most, since the rule asks for more than an interval off zero.
    private static string Chance(List<PageMeasure> judged) => string.Create(CultureInfo.InvariantCulture,
        $"Had nothing changed, chance alone would still call at most {judged.Sum(m => m.Rule.LargestFalseFlagRate):0.0#} of {Words.Count(judged.Count)} clear, on average.");

    private static string Since(PlayerPage page, List<PageMeasure> judged)
        => judged.Select(m => m.Before!.Date).Distinct().Count() == 1 ? PageWords.Day(judged[0].Before!.Date, page.Today) : "the day named in the table";

    private static string Names(IEnumerable<PageMeasure> measures) => Words.List([.. measures.Select(m => PageWords.Short(m.Metric))]);
}
