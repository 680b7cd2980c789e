using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Promoted;

/// <summary>
/// A figure from outside the project that a promoted metric is held against. It is blank, and then it fails; or filled in; or waived with a reason, for a
/// metric nobody has published anything about.
/// </summary>
internal abstract partial record PublishedCheck
{
    /// <summary>A reason has at least so many words; fewer say nothing to a reviewer.</summary>
    public const int WordsOfAReason = 3;

    /// <summary>Begins the message of a blank check; <c>analytics promote</c> counts by it.</summary>
    public const string BlankMark = "Blank check";

    /// <summary>Nobody has filled it in yet.</summary>
    /// <param name="source">Key into docs/references.md where a figure may stand; empty when none is known.</param>
    public static PublishedCheck Blank(string source = "") => new BlankCheck(source);

    /// <summary>A figure from outside.</summary>
    /// <param name="source">Key into docs/references.md, with the place in it: <c>key, table 2</c>.</param>
    /// <param name="day">The inputs, see <see cref="Catalogue.Days"/>.</param>
    /// <param name="expected">The figure, in the metric's unit.</param>
    /// <param name="tolerance">How far the metric may be from it, above 0, in the metric's unit.</param>
    /// <param name="because">Why so far, for example <c>printed to two decimals</c>.</param>
    public static PublishedCheck Filled(string source, AthleteDay day, double expected, double tolerance, string because)
        => new FilledCheck(source, day, expected, tolerance, because);

    /// <summary>No figure from outside can be had.</summary>
    /// <param name="reason">Why, in words.</param>
    public static PublishedCheck Waived(string reason) => new WaivedCheck(reason);

    /// <summary>Fails when blank, when the metric gives another value, or when what was filled in says too little.</summary>
    public abstract void Hold(Metric metric);

    private static void Says(string words, string what)
        => Assert.True(words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length >= WordsOfAReason, $"{what} '{words}' says too little; write {WordsOfAReason} words or more.");

    private sealed record BlankCheck(string Source) : PublishedCheck
    {
        public override void Hold(Metric metric)
            => Assert.Fail($"{BlankMark} of {metric.Id}: look for a figure{(Source.Length > 0 ? $" in {Source}" : "")} and put PublishedCheck.Filled(source, day, expected, tolerance, because) in its place, or PublishedCheck.Waived(\"why there is none\").");
    }

    private sealed record FilledCheck(string Source, AthleteDay Day, double Expected, double Tolerance, string Because) : PublishedCheck
    {
        public override void Hold(Metric metric)
        {
            var keys = ListedKey().Matches(File.ReadAllText(Repository.Path("docs", "references.md"))).Select(m => m.Groups[1].Value);
            Assert.Contains(Source.Split(',', ' ')[0], keys);
            Assert.True(Tolerance > 0 && double.IsFinite(Tolerance), string.Create(CultureInfo.InvariantCulture, $"The tolerance {Tolerance} must be above 0 and finite."));
            Says(Because, "The reason of the tolerance");
            var value = Assert.Single(MetricDay.Of(metric, [Day]).Values).Value;
            Assert.True(Math.Abs(value - Expected) <= Tolerance,
                string.Create(CultureInfo.InvariantCulture, $"{Source} gives {Expected} {metric.Unit}, {metric.Id} gives {value:G10}; more than {Tolerance} apart ({Because})."));
        }
    }

    private sealed record WaivedCheck(string Reason) : PublishedCheck
    {
        public override void Hold(Metric metric) => Says(Reason, "The waiver");
    }

    [GeneratedRegex(@"^- \*\*(\S+?)\*\*", RegexOptions.Multiline)]
    private static partial Regex ListedKey();
}
