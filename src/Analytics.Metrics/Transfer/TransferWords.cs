using System.Globalization;
using Analytics.Statistics;

namespace Analytics.Metrics.Transfer;

/// <summary>The sentences of a transfer study. None of them says that one measure made the other.</summary>
internal static class TransferWords
{
    private const string FormLeftIn = " Too few testing days: what a good day gives to both tests is still in it.";

    public static string Of(TransferPair pair, int pairs, TransferOptions options)
    {
        var names = $"{pair.WeightRoom.Name} and {pair.Field.Name}";
        if (pair.Gains is not { } gains) return $"{Capital(pair.WeightRoom.Name)} and {pair.Field.Name}: not computed. {string.Join(" ", pair.Cautions)}".TrimEnd();
        var players = string.Create(CultureInfo.InvariantCulture, $"{gains.Athletes} players");
        var all = pairs == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", all {pairs} pairs taken together");
        var figure = Figure(pair);
        var sentence = pair.Verdict switch
        {
            TransferVerdict.WentTogether => $"Gains in {pair.WeightRoom.Name} went with gains in {pair.Field.Name} beyond what the calendar explains: {figure}{all}, {players}. Not proof that one made the other.",
            TransferVerdict.WentOpposite => $"Gains in {pair.WeightRoom.Name} went with smaller gains or losses in {pair.Field.Name}: {figure}{all}, {players}. Not proof that one made the other.",
            TransferVerdict.NoSpreadSeen => $"{Capital(names)}: {NoSpread(pair)}, so whether gains went together cannot be told with {players}.",
            TransferVerdict.AgainstStrongLink => string.Create(CultureInfo.InvariantCulture,
                $"{Capital(names)}: the data speak against a strong link between gains: below {pair.SimultaneousOfTrueGains!.Value.High:0.00}{all}, {players}."),
            _ => $"{Capital(names)}: no evidence either way with {players} ({figure}{all}).",
        };
        var found = pair.Verdict is TransferVerdict.WentTogether or TransferVerdict.WentOpposite;
        if (!found && gains.P <= 1 - options.Level)
            sentence += " Alone its interval would leave out 0; among so many pairs that is not enough.";
        if (gains.ReliabilityX is null) sentence += FormLeftIn;
        if (pair.SharedInputs.Count > 0) sentence += $" Both are made from {string.Join(" and ", pair.SharedInputs)}: part of any association is arithmetic.";
        return sentence;
    }

    public static string OfAll(IReadOnlyList<TransferPair> pairs, double chance, double level)
    {
        var judged = pairs.Where(p => p.Gains?.P is not null).ToList();
        if (judged.Count == 0) return "Whether weight-room gains reached the field cannot be told: no pair of measures has enough players with gains in both that differ between players.";
        var (least, most) = (judged.Min(p => p.Athletes), judged.Max(p => p.Athletes));
        var players = string.Create(CultureInfo.InvariantCulture, $"{(least == most ? $"{least}" : $"{least} to {most}")} players");
        var together = judged.Where(p => p.Verdict == TransferVerdict.WentTogether).ToList();
        var alone = judged.Count(p => p.Gains!.P <= 1 - level);
        var what = together.Count == 0
            ? $"No evidence that weight-room gains went with field gains in any of {Count(judged.Count, "pair")} of measures, with {players}; this is not evidence of none."
            : $"In {together.Count} of {Count(judged.Count, "pair")} of measures gains in the weight room went with gains on the field beyond what the calendar explains ({players}); that is not proof that one made the other.";
        var arithmetic = together.Count(p => p.SharedInputs.Count > 0);
        if (arithmetic > 0) what += $" {(arithmetic == 1 ? "One of them is" : $"{arithmetic} of them are")} partly arithmetic, since both measures share an input.";
        var against = judged.Count(p => p.Verdict == TransferVerdict.AgainstStrongLink);
        if (against > 0) what += $" In {against} the data speak against a strong link.";
        var opposite = judged.Count(p => p.Verdict == TransferVerdict.WentOpposite);
        if (opposite > 0) what += $" In {opposite} they went opposite ways.";
        if (judged.Exists(p => p.Gains!.ReliabilityX is null)) what += FormLeftIn;
        return what + string.Create(CultureInfo.InvariantCulture, $" Looked at one by one, {(alone == 0 ? "none" : alone == 1 ? "one" : alone.ToString(CultureInfo.InvariantCulture))} would stand out; chance alone would show about {chance:0.#}.");
    }

    /// <summary>r with its interval for all pairs together: of true gains where it can be told, else as measured.</summary>
    private static string Figure(TransferPair pair)
        => pair.Gains!.OfTrueGains is { } r && pair.SimultaneousOfTrueGains is { } interval
            ? Text("r of true gains", Math.Clamp(r, -1, 1), interval)
            : Text("r as measured", pair.Gains.Value, pair.Simultaneous);

    private static string Text(string what, double r, Interval? interval) => interval is { } i
        ? string.Create(CultureInfo.InvariantCulture, $"{what} {r:0.00} ({i.Low:0.00} to {i.High:0.00})")
        : string.Create(CultureInfo.InvariantCulture, $"{what} {r:0.00}, no interval");

    private static string NoSpread(TransferPair pair)
    {
        var gains = pair.Gains!;
        var (x, y) = (!(gains.SpreadPX <= 0.05), !(gains.SpreadPY <= 0.05));
        return $"gains in {(x && y ? "both" : x ? pair.WeightRoom.Name : pair.Field.Name)} do not differ between players by more than error";
    }

    private static string Count(int n, string thing) => string.Create(CultureInfo.InvariantCulture, $"{n} {thing}{(n == 1 ? "" : "s")}");

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
