using Analytics.Statistics.Multiplicity;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Load;

/// <summary>
/// Every pair of dose and change that was looked at, in the order given, with p corrected for their number (Holm [holm1979], which holds whatever hangs together). None
/// is left out: the best of many pairs looks good by chance alone.
/// </summary>
public sealed record DoseLooks : Result
{
    private DoseLooks()
    {
    }

    /// <summary>All pairs, also those that could not be computed.</summary>
    public required IReadOnlyList<DoseAgainstChange> Pairs { get; init; }

    /// <summary>Corrected p of each pair, in the same order; null where a pair could not be computed.</summary>
    public required IReadOnlyList<double?> AdjustedP { get; init; }

    /// <summary>Pairs that could be computed: the number corrected for.</summary>
    public int Looks => AdjustedP.Count(p => p is not null);

    /// <summary>Pairs whose raw p is at most 0.05 by chance alone, and how many to expect.</summary>
    public ChanceFlags ByChance => ChanceFlags.Of(Looks, 0.05);

    /// <summary>Corrects all pairs looked at.</summary>
    /// <param name="pairs">All of them, not a choice.</param>
    public static DoseLooks Of(IReadOnlyList<DoseAgainstChange> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        var raw = pairs.Select(p => p.Rank?.P).ToList();
        double[] known = [.. raw.OfType<double>()];
        var corrected = known.Length > 0 ? AdjustedPValues.Of(known, Adjustment.Holm).Adjusted : [];
        var next = 0;
        return new() { Pairs = pairs, AdjustedP = [.. raw.Select(p => p is null ? (double?)null : corrected[next++])] };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Dose against change, all pairs", "Spearman's rank correlation [spearman1904]; p corrected for the number of looks (Holm) [holm1979]",
        Pairs.Count == 0
            ? [new("pairs", 0) { Note = "nothing to look at" }]
            : [.. Pairs.Select((p, i) => new ResultLine(p.Pair.ToString(), p.Rank?.Value) { Interval = p.Rank?.Interval, Note = Note(p, AdjustedP[i]) })])
    {
        Basis = $"{Pairs.Count} {(Pairs.Count == 1 ? "pair" : "pairs")} looked at, {Looks} computable",
        Remarks =
        [
            LoadCautions.Description,
            .. Looks > 0 ? [FormattableString.Invariant($"With no relation anywhere, {ByChance.Expected:0.#} of {Looks} pairs would have a raw p of at most 0.05; intervals here are not corrected.")] : Array.Empty<string>(),
        ],
    };

    private static string Note(DoseAgainstChange pair, double? adjusted) => adjusted is { } p
        ? FormattableString.Invariant($"{pair.Points.Count} athletes, p {Text(pair.Rank!.P!.Value)}, corrected {Text(p)}")
        : pair.NotComputable!;

    private static string Text(double p) => p < 0.0001 ? "< 0.0001" : FormattableString.Invariant($"{p:0.0000}");
}
