using System.Text.RegularExpressions;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>The identifier of the new metric and the names that follow from it.</summary>
internal sealed partial record PromotedName
{
    private PromotedName(string id) => Id = id;

    /// <summary>Identifier, for example <c>long_jump_for_size</c>.</summary>
    public string Id { get; }

    /// <summary>The class that holds the metric, for example <c>LongJumpForSizeMetric</c>.</summary>
    public string Class => string.Concat(Id.Split('_').Select(part => char.ToUpperInvariant(part[0]) + part[1..])) + "Metric";

    /// <summary>The class of its tests.</summary>
    public string TestClass => Class + "Tests";

    /// <exception cref="NotebookException">It is none.</exception>
    public static PromotedName Of(string id) => Form().IsMatch(id) ? new(id)
        : throw new NotebookException(Fault.Usage, $"--name '{PlainLine.Of(id)}' is no identifier of a metric: lower case letters, digits and single underscores, beginning with a letter, at most 60 characters, for example first_step_push.");

    [GeneratedRegex(@"\A(?=.{1,60}\z)[a-z][a-z0-9]*(_[a-z0-9]+)*\z")]
    private static partial Regex Form();
}
