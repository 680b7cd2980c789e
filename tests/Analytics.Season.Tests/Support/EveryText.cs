using System.Collections;
using System.Reflection;

namespace Analytics.Season.Tests.Support;

/// <summary>Every text an object holds, in fields private or not, of itself and of all it leads to.</summary>
internal static class EveryText
{
    public static IReadOnlyList<string> Of(object root)
    {
        var texts = new List<string>();
        var seen = new HashSet<object>(ReferenceEqualityComparer.Instance);
        var open = new Stack<object>([root]);
        while (open.TryPop(out var item))
        {
            if (item is string text) texts.Add(text);
            else if (item.GetType() is { IsPrimitive: false, IsEnum: false } type && (type.IsValueType || seen.Add(item)))
                foreach (var inner in item is IEnumerable list && !type.FullName!.StartsWith("Analytics.", StringComparison.Ordinal) ? list.Cast<object?>() : Fields(item, type))
                    if (inner is not null) open.Push(inner);
        }

        return texts;
    }

    private static IEnumerable<object?> Fields(object item, Type? type)
    {
        for (; type is not null && IsOurs(type); type = type.BaseType)
            foreach (var field in type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
                yield return field.GetValue(item);
    }

    private static bool IsOurs(Type type) => type.FullName!.StartsWith("Analytics.", StringComparison.Ordinal) || type.FullName.StartsWith("System.Collections.Generic.KeyValuePair", StringComparison.Ordinal) || type.FullName.StartsWith("System.ValueTuple", StringComparison.Ordinal);
}
