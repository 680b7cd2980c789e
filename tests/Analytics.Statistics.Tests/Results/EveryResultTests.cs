using System.Reflection;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Tests.Results;

/// <summary>What the library hands out prints itself: every public record made by a public method derives from <see cref="Result"/>.</summary>
public sealed class EveryResultTests
{
    private static readonly string[] s_endings = ["Options", "Rule", "Iterate"];

    /// <summary>Records that are no results of their own, each with the reason.</summary>
    private static readonly Dictionary<string, string> s_parts = new(StringComparer.Ordinal)
    {
        ["ResultSheet"] = "what every result is printed from",
        ["SheetColumns"] = "the cells of a sheet",
        ["GroupMoments"] = "what an effect size is worked from: a size, a mean and an SD as given",
        ["ChartPoint"] = "one row of a chart; the chart prints",
        ["CusumPoint"] = "one row of a chart; the chart prints",
    };

    [Fact]
    public void Every_record_handed_out_is_a_result_or_says_why_not()
    {
        var missing = HandedOut().Where(t => !t.IsSubclassOf(typeof(Result)) && !s_parts.ContainsKey(t.Name)).Select(t => t.FullName).Order().ToList();
        Assert.True(missing.Count == 0, $"{missing.Count} records are handed out without a sheet; derive them from Result or name the reason here:\n{string.Join('\n', missing)}");
    }

    [Fact]
    public void The_list_of_parts_holds_nothing_that_is_gone_or_converted()
    {
        var open = HandedOut().Where(t => !t.IsSubclassOf(typeof(Result))).Select(t => t.Name).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(s_parts.Keys, name => !open.Contains(name));
    }

    // Static methods and properties of public types, and what results themselves hand out by methods.
    private static IEnumerable<Type> HandedOut() => typeof(Result).Assembly.GetExportedTypes()
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Where(m => !m.IsSpecialName && m.Name is not ("<Clone>$" or "Deconstruct" or "GetHashCode"))
        .SelectMany(m => Inside(m.ReturnType))
        .Where(t => t.Assembly == typeof(Result).Assembly && t is { IsClass: true, IsPublic: true } && IsRecord(t) && t != typeof(Result))
        .Where(t => !s_endings.Any(e => t.Name.EndsWith(e, StringComparison.Ordinal)))
        .Distinct();

    private static IEnumerable<Type> Inside(Type type) => type.IsGenericType ? type.GetGenericArguments().SelectMany(Inside).Prepend(type)
        : type.HasElementType ? Inside(type.GetElementType()!) : [type];

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null;
}
