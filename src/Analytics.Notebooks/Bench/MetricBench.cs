using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.Bench;

/// <summary>The bench on which an idea for a metric is tried on a squad's own season. Each member is the output of one notebook cell.</summary>
/// <example>
/// <code>
/// var bench = MetricBench.Open("../data-demo");
/// var idea = Sketch.Each&lt;JumpTrial&gt;("long_jump_for_size", "Long jump for size", unit: "1", Direction.Higher, believe: (0.8, 2.2),
///     (jump, day) => jump.Kind == JumpKind.StandingLong ? jump.Distance / day.Stature : null);
/// bench.Card(idea)
/// </code>
/// </example>
public sealed class MetricBench
{
    private readonly BenchContext _bench;

    private MetricBench(BenchContext bench) => _bench = bench;

    /// <summary>Opens a season, and earlier ones if there are any.</summary>
    /// <param name="season">Season folder.</param>
    /// <param name="earlier">Earlier season folders, oldest first, separated by semicolons; empty for none.</param>
    /// <param name="share">How players are named: <c>names</c>, <c>initials</c> or <c>codes</c>.</param>
    /// <exception cref="SeasonException">A season cannot be used; the message says what to do.</exception>
    public static MetricBench Open(string season, string earlier = "", string share = "names") => Of(SeasonShelf.Open(season, earlier, share));

    /// <summary>The bench on a season that was read before.</summary>
    /// <param name="season">The season.</param>
    /// <exception cref="SeasonException">It has no testing day.</exception>
    public static MetricBench Of(SeasonData season)
    {
        ArgumentNullException.ThrowIfNull(season);
        return new(new BenchContext(season));
    }

    /// <summary>The season as read.</summary>
    public SeasonData Season => _bench.Data;

    /// <summary>Title, club, how many ideas on how many players and days.</summary>
    /// <param name="sketches">The ideas on trial.</param>
    public Block Head(params MetricSketch[] sketches)
    {
        ArgumentNullException.ThrowIfNull(sketches);
        return new ReportHead("Metric bench", _bench.Data.Settings.Club,
            $"{Words.Count(sketches.Length)} {(sketches.Length == 1 ? "idea" : "ideas")} on trial with {Words.Players(_bench.Athletes.Count)} and {Words.Count(_bench.Days.Count)} testing {(_bench.Days.Count == 1 ? "day" : "days")}, {_bench.Data.Settings.Season}");
    }

    /// <summary>One answer for each idea: what can be said of it, and why. What is wrong with an idea is told here and stops no other.</summary>
    /// <param name="sketches">The ideas on trial; at least one.</param>
    public Block Answers(params MetricSketch[] sketches)
    {
        ArgumentNullException.ThrowIfNull(sketches);
        return BenchAnswers.Of(_bench, sketches);
    }

    /// <summary>Everything that is asked of an idea: how it lies, whether it returns, what it says that others do not, whether it moves, and its three weakest points.</summary>
    /// <param name="sketch">The idea.</param>
    public Block Card(MetricSketch sketch)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        return CardBlock.Of(_bench, sketch);
    }

    /// <summary>The error an idea gets from the errors of its inputs, beside the error observed.</summary>
    /// <param name="sketch">The idea.</param>
    public Block ErrorFromInputs(MetricSketch sketch)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        return InputErrorBlock.Of(_bench, sketch);
    }

    /// <summary>Rival definitions of one idea side by side on the same data.</summary>
    /// <param name="rivals">Two definitions or more, the first one the one to beat.</param>
    public Block Compare(params MetricSketch[] rivals)
    {
        ArgumentNullException.ThrowIfNull(rivals);
        return RivalBlock.Of(_bench, rivals);
    }

    /// <summary>How the verdicts come about, and what they do not say.</summary>
    public Block Methods() => BenchMethods.Of(_bench);

    /// <summary>Files, digests and choices behind the bench.</summary>
    public Block Provenance() => ProvenanceBlock.Of(_bench.Data, ("Testing days", string.Join(", ", _bench.Days.Select(d => Words.Date(d.Date)))));
}
