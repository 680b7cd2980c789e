using System.Globalization;
using System.Reflection;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Tests.EntryPoints;

/// <summary>
/// Every public entry of the library, found by reflection, called with good, odd and broken arguments: it answers with figures or with a worded error,
/// never with a silent NaN and never with an error of the machinery (index, null, cast, division).
/// </summary>
public sealed class EntryPointTests
{
    private const int MostCalls = 300;
    private const int MostCallsOnResult = 12;

    // Words of a null argument come from the runtime; everything else must say more than a type name.
    private const int FewestLetters = 20;

    // What a message about a NaN must say beside the value: what is allowed or what to do.
    private static readonly string[] s_ways = ["allowed", "finite", "null for", "needs values above 0"];

    public static TheoryData<string> Types => [.. typeof(Result).Assembly.GetExportedTypes().Where(t => Methods(t).Any()).Select(t => t.FullName!).Order()];

    [Theory]
    [MemberData(nameof(Types))]
    public void Every_entry_answers_or_says_what_is_wrong(string name)
    {
        var type = typeof(Result).Assembly.GetType(name, throwOnError: true)!;
        var failures = new List<string>();
        foreach (var method in Methods(type)) Call(null, method, MostCalls, failures, deep: true);
        Assert.True(failures.Count == 0, $"{failures.Count} calls went wrong, the first of each kind:\n{string.Join('\n', failures.GroupBy(f => f.Split('\t')[0] + f.Split('\t')[2]).Select(g => g.First()).Take(25))}");
    }

    [Fact]
    public void Entries_are_found_in_number()
    {
        var all = typeof(Result).Assembly.GetExportedTypes().SelectMany(Methods).Count();
        Assert.InRange(all, 100, 1000);
    }

    private static IEnumerable<MethodInfo> Methods(Type type) => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
        .Where(m => !m.IsSpecialName).Select(Closed).OfType<MethodInfo>().Where(Suits);

    // Labels are text in every generic entry.
    private static MethodInfo? Closed(MethodInfo method)
    {
        if (!method.IsGenericMethodDefinition) return method;
        return method.GetGenericArguments() is [{ } one] && (one.GenericParameterAttributes & GenericParameterAttributes.NotNullableValueTypeConstraint) == 0
            ? method.MakeGenericMethod(typeof(string)) : null;
    }

    private static bool Suits(MethodInfo method) => method.GetParameters().All(p => ArgumentPools.Of(p.ParameterType) is not null);

    private static void Call(object? target, MethodInfo method, int most, List<string> failures, bool deep)
    {
        foreach (var arguments in Combinations(method, most))
        {
            try
            {
                Look(method.Invoke(target, arguments), failures, deep, () => Words(method, arguments));
            }
            catch (TargetInvocationException wrapped)
            {
                if (Complaint(wrapped.InnerException!) is { } complaint) failures.Add($"{Words(method, arguments)}\t{complaint}");
            }
        }
    }

    private static string? Complaint(Exception error) => error switch
    {
        ArgumentNullException => null,
        ArgumentException or InvalidOperationException or NotSupportedException
            => error is ObjectDisposedException || error.Message.Length < FewestLetters || (error.Message.Contains("NaN;", StringComparison.Ordinal) && !s_ways.Any(w => error.Message.Contains(w, StringComparison.Ordinal)))
                ? $"says too little: {error.Message}" : null,
        _ => $"{error.GetType().Name}: {error.Message} {error.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Analytics", StringComparison.Ordinal))?.Trim()}",
    };

    private static void Look(object? made, List<string> failures, bool deep, Func<string> words)
    {
        if (made is double number && double.IsNaN(number)) failures.Add($"{words()}\tNaN");
        if (made is Interval interval && (double.IsNaN(interval.Low) || double.IsNaN(interval.High))) failures.Add($"{words()}\tNaN in {interval}");
        if (made is IEnumerable<Result> many)
        {
            foreach (var one in many) Look(one, failures, deep: false, words);
        }

        if (made is not Result result) return;
        var text = string.Empty;
        try
        {
            text = result.ToString();
            var sheet = result.Sheet();
            foreach (var line in sheet.Lines)
            {
                if (new[] { line.Value, line.StandardError, line.DegreesOfFreedom, line.Interval?.Low, line.Interval?.High }.Any(v => v is { } x && double.IsNaN(x)))
                    failures.Add($"{words()}\tNaN in the line '{line.Name}'");
            }
        }
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            failures.Add($"{words()}\tits sheet throws {error.GetType().Name}: {error.Message}");
        }

        if (text.Contains("NaN", StringComparison.Ordinal)) failures.Add($"{words()}\tNaN in its text: {text.Split('\n').First(l => l.Contains("NaN", StringComparison.Ordinal))}");
        if (!deep) return;
        foreach (var property in result.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0)) Read(result, property, failures, words);
        foreach (var method in result.GetType().GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m => !m.IsSpecialName && m.Name is not ("Equals" or "GetHashCode" or "ToString" or "Sheet" or "<Clone>$" or "Deconstruct") && !m.IsGenericMethod && Suits(m)))
        {
            Call(result, method, MostCallsOnResult, failures, deep: false);
        }
    }

    private static void Read(Result result, PropertyInfo property, List<string> failures, Func<string> words)
    {
        try
        {
            Look(property.GetValue(result), failures, deep: false, () => $"{words()}.{property.Name}");
        }
        catch (TargetInvocationException wrapped)
        {
            failures.Add($"{words()}.{property.Name}\tthrows {wrapped.InnerException!.GetType().Name}: {wrapped.InnerException.Message}");
        }
    }

    // All combinations of few arguments, a fixed draw of many.
    private static IEnumerable<object?[]> Combinations(MethodInfo method, int most)
    {
        var pools = method.GetParameters().Select(p => ArgumentPools.Of(p.ParameterType)!).ToArray();
        var all = pools.Aggregate(1L, (product, pool) => product * pool.Length);
        if (all <= most)
        {
            for (long at = 0; at < all; at++)
            {
                var rest = at;
                yield return [.. pools.Select(pool => Next(pool, ref rest))];
            }

            yield break;
        }

        var random = new Random(20_251_125);
        for (var draw = 0; draw < most; draw++)
        {
            // Half of the draws take what comes first in most pools, so that one odd argument meets good ones.
            var odd = random.Next(pools.Length);
            yield return [.. pools.Select((pool, i) => pool[random.Next(draw % 2 == 0 || i == odd ? pool.Length : Math.Min(3, pool.Length))])];
        }
    }

    private static object? Next(object?[] pool, ref long rest)
    {
        var value = pool[rest % pool.Length];
        rest /= pool.Length;
        return value;
    }

    private static string Words(MethodInfo method, object?[] arguments)
        => $"{method.DeclaringType!.Name}.{method.Name}\t({string.Join(", ", arguments.Select(Show))})";

    private static string Show(object? value) => value switch
    {
        null => "null",
        double d => d.ToString("R", CultureInfo.InvariantCulture),
        IReadOnlyList<double> list => $"[{string.Join(" ", list.Take(10).Select(v => Show(v)))}]",
        System.Collections.IEnumerable many and not string => $"[{string.Join(" ", many.Cast<object?>().Take(10).Select(Show))}]",
        TrialTable t => $"table {string.Join("|", Enumerable.Range(0, Math.Min(t.Athletes, 6)).Select(i => string.Join(" ", Enumerable.Range(0, t.Trials).Select(j => Show(t[i, j])))))}",
        _ => value.ToString()!.Split('\n')[0],
    };
}
