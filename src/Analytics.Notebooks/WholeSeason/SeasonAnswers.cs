using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Transfer;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics.Change;
using Analytics.Statistics.Multiplicity;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>The four answers a head coach needs: did the squad change, who changed, did it reach the field, which tests to keep.</summary>
internal static class SeasonAnswers
{
    public static Answers Of(SeasonContext season) => new(Squad(season), Players(season), Field(season), Tests(season));

    private static Answer Squad(SeasonContext season)
    {
        var moved = season.Headlines.Where(m => season.Trend(m).Squad.OverSeason is not null).ToList();
        if (moved.Count == 0)
            return new("Did the squad change: cannot tell yet.", season.Days.Count < 2 ? "One testing day is a starting point, not yet a change."
                : season.Measures.Count == 0 ? "No measure was done on two occasions by enough players." : "No trend could be fitted: too few players, or values that do not vary.", Tone.Muted);
        List<string> parts = [];
        Say(Verdict.ClearGain, "improved");
        Say(Verdict.ClearLoss, "got worse");
        Say(Verdict.TooSmallToMatter, "moved too little to matter");
        string[] open = [.. moved.Where(m => season.Trend(m).Squad.Verdict == Verdict.CannotTellYet).Select(Words.Short)];
        if (open.Length > 0) parts.Add(parts.Count == 0 ? $"no evidence yet that {Words.List(open)} changed enough to matter" : $"cannot tell yet for {Words.List(open)}");
        var numbers = string.Join("; ", moved.Select(m => $"{Words.Short(m)} {season.Unit(m).ChangeText(season.Trend(m).Squad.OverSeason!.Change.Difference, season.Trend(m).Squad.OverSeason!.Interval)}"));
        var lost = moved.Exists(m => season.Trend(m).Squad.Verdict == Verdict.ClearLoss);
        var gained = moved.Exists(m => season.Trend(m).Squad.Verdict == Verdict.ClearGain);
        string[] unsized = [.. moved.Where(m => season.Trend(m).Squad.Verdict.IsClear() && season.Trend(m).Worthwhile.Value is null).Select(Words.Short)];
        var size = unsized.Length == 0 ? "" : $" How much matters is not known for {Words.List(unsized)}; there only the direction is clear.";
        return new(Words.Capital(string.Join("; ", parts)) + ".", $"Squad mean over the season: {numbers}.{size}", lost ? Tone.Loss : gained ? Tone.Gain : Tone.Muted);

        void Say(Verdict verdict, string words)
        {
            string[] names = [.. moved.Where(m => season.Trend(m).Squad.Verdict == verdict && m.Better != Direction.Neither).Select(Words.Short)];
            if (names.Length > 0) parts.Add($"{Words.List(names)} {words}");
        }
    }

    private static Answer Players(SeasonContext season)
    {
        var changes = season.Measures.Where(m => m.Better != Direction.Neither).Select(season.Change).ToList();
        var judged = changes.Sum(PlayersBlock.Judged);
        if (judged == 0) return new("Who changed: cannot tell yet.", $"No player did a test with a known error on two occasions.{(season.Profile.Retests.Count > 0 ? " Testing days of one week are one occasion." : " Test twice within one week to learn the error of your tests.")}", Tone.Muted);
        int gained = Count(Verdict.ClearGain), lost = Count(Verdict.ClearLoss), flags = changes.Sum(c => c.Gains + c.Losses);
        var chance = ChanceFlags.OfSquad(
            changes.SelectMany(c => c.Athletes.Where(a => a.Reason is null).Select(a => a.AthleteId)).Distinct().Count(), changes.Count(c => PlayersBlock.Judged(c) > 0),
            season.Profile.Rule.LargestFalseFlagRate, judged);
        var conclusion = gained + lost == 0 ? "No player clearly gained or lost."
            : $"{Words.Capital(Words.Players(gained))} clearly gained in something, {(lost == 0 ? "none" : Words.Count(lost))} clearly lost{(flags <= chance.High ? "; chance alone could give as many flags" : Few(chance))}.";
        var most = changes.Where(c => c.Gains > 0).OrderByDescending(c => c.Gains).ThenBy(c => c.Metric.Id, StringComparer.Ordinal).Take(3).Select(c => string.Create(CultureInfo.InvariantCulture, $"{Words.Short(c.Metric)} {c.Gains}")).ToList();
        return new(conclusion, string.Create(CultureInfo.InvariantCulture,
            $"{flags} clear {(flags == 1 ? "change" : "changes")} in {judged} comparisons ({changes.Sum(c => c.Gains)} better, {changes.Sum(c => c.Losses)} worse{(most.Count > 0 ? "; most gains in " + Words.List(most) : "")}). Had nobody changed, chance alone would give at most {chance.Expected:0.#} on average, half of them losses, seldom more than {chance.High}."),
            lost > gained ? Tone.Loss : gained > 0 ? Tone.Gain : Tone.Muted);

        // Whoever changed nothing is flagged one way as often as the other.
        string Few(ChanceFlags chance)
            => lost > 0 && changes.Sum(c => c.Losses) <= chance.Expected / 2 ? "; chance alone could give as many losses"
            : gained > 0 && changes.Sum(c => c.Gains) <= chance.Expected / 2 ? "; chance alone could give as many gains" : "";

        int Count(Verdict verdict) => changes.SelectMany(c => c.Athletes.Where(a => a.Verdict == verdict).Select(a => a.AthleteId)).Distinct().Count();
    }

    private static Answer Field(SeasonContext season)
    {
        if (season.Transfer is not { Judged: > 0 } study)
            return new("Did it reach the field: cannot tell yet.", season.Transfer?.Sentence ?? "It takes a weight-room and a field measure done on two occasions by enough players.", Tone.Muted);
        var together = study.Pairs.Where(p => p.Verdict == TransferVerdict.WentTogether).ToList();
        var opposite = study.Pairs.Where(p => p.Verdict == TransferVerdict.WentOpposite).ToList();
        var conclusion = together.Count == 0 && opposite.Count > 0 ? $"Gains in {Words.Short(opposite[0].WeightRoom.Metric)} went with smaller gains or losses in {Words.Short(opposite[0].Field.Metric)}{(opposite.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $", and {opposite.Count - 1} pairs more") : "")}."
            : together.Count == 0 && study.Pairs.Any(p => p.Verdict == TransferVerdict.AgainstStrongLink) ? "Did weight-room gains reach the field: no evidence that they did; in some pairs the data speak against a strong link."
            : together.Count == 0 ? "Did weight-room gains reach the field: no evidence either way."
            : $"Gains in {Words.List([.. together.Take(2).Select(p => $"{Words.Short(p.WeightRoom.Metric)} went with gains in {Words.Short(p.Field.Metric)}")])}{(together.Count > 2 ? string.Create(CultureInfo.InvariantCulture, $", and {together.Count - 2} pairs more") : "")}.";
        return new(conclusion, study.Sentence, together.Count > 0 ? Tone.Gain : opposite.Count > 0 ? Tone.Loss : Tone.Muted);
    }

    private static Answer Tests(SeasonContext season)
    {
        var tests = TestsBlock.All(season);
        if (tests.Count == 0) return new("Which tests to keep: cannot tell yet.", "No test was done by enough players.", Tone.Muted);
        var said = new[] { TestAdvice.Keep, TestAdvice.Mend, TestAdvice.Drop, TestAdvice.CannotTellYet }.Select(a => (Advice: a, Names: tests.Where(q => q.Advice == a).Select(q => Words.Short(q.Metric)).ToList())).Where(a => a.Names.Count > 0).ToList();
        var counts = said.Select(s => s.Advice == TestAdvice.CannotTellYet ? string.Create(CultureInfo.InvariantCulture, $"cannot tell yet for\u00a0{s.Names.Count}") : string.Create(CultureInfo.InvariantCulture, $"{s.Advice.Words()}\u00a0{s.Names.Count}")).ToList();
        return new(string.Create(CultureInfo.InvariantCulture, $"Of {tests.Count} {(tests.Count == 1 ? "measure" : "measures")}: {string.Join(", ", counts)}."),
            string.Join(". ", said.Select(s => $"{Words.Capital(s.Advice.Words())}: {Words.List(s.Names)}")) + ".", said.Exists(s => s.Advice == TestAdvice.Drop) ? Tone.Loss : Tone.Plain);
    }
}
