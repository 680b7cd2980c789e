using Analytics.Statistics.Change;
using Analytics.Statistics.EffectSize;
using Analytics.Statistics.MixedModels;
using Analytics.Statistics.Monitoring;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Resampling;

namespace Analytics.Statistics.Tests.EntryPoints;

/// <summary>Good, odd and broken arguments of every type the library takes.</summary>
internal static class ArgumentPools
{
    private static readonly double[] s_numbers =
        [0.5, 0.05, 0.95, 1, 2, 3.7, 40, 0, -0.5, -1, -40, double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e-300, 1e300, -1e300, 1e-70, 1e70, -1e70];

    private static readonly int[] s_counts = [0, 1, 2, 3, 4, 5, 10, 30, 1000, -1, int.MinValue];

    private static readonly double[]?[] s_samples =
    [
        [12.1, 15.3, 9.8, 20.4, 17.7, 11.2, 14.9, 13.3, 18.6, 10.5], [1, 2, 4, 3, 7], [3, 1, 2, 2, 9], [0.2, 0.1, 0.4, 0.3, 0.9], [1, 2, 3, 4, 5], [5, 4, 3, 2, 1],
        [1, 2], [2, 1], [1, 2, 4], [4, 2, 1], [1], [], [3, 3], [3, 3, 3, 3, 3], [0, 0, 0, 0, 0], [0.1, 0.1, 0.1, 0.1, 0.3], [1, 1, 2, 2, 2], [-1, -2, 0, 2, 1],
        [1, double.NaN, 3, 4, 5], [1, 2, double.PositiveInfinity, 4, 5], [double.NegativeInfinity, 2], [1e300, -1e300, 1e300, 2e300, -2e300], [1e69, -1e69, 3e69, 2e69, -2e69], [1e-69, 2e-69, 4e-69, 3e-69, 9e-69], [1e-300, 2e-300, 4e-300, 3e-300, 9e-300],
        [1e15 + 1, 1e15 + 2, 1e15 + 4, 1e15 + 3, 1e15 + 7], null,
    ];

    private static readonly double?[][]?[] s_tables =
    [
        [[38.2, 39], [41.5, 41.1], [35.1, 36.4], [44.8, 45.9]], [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]],
        [[1, 2], [2, 1]], [[1, 1], [2, 2]], [[1, 2], [2, 3], [3, 4]], [[3, 3], [3, 3], [3, 3]], [[1, null], [null, 2]], [[1, 2], [null, 2], [4, null]],
        [[1, 2, null], [2, null, 3], [4, 4, 4], [null, 1, 0]], [[null, null], [null, null]], [[1, 2]], [[0, -1], [-2, 1], [3, -3]], [[1], [2]], [], [[1, 2], [3]],
        [[double.NaN, 1], [1, 2]], [[1e300, -1e300], [1e300, 2e300], [0, 1]], [[1e-300, 2e-300], [3e-300, 1e-300], [5e-300, 9e-300]], null,
    ];

    private static readonly Dictionary<Type, object?[]> s_pools = new()
    {
        [typeof(double)] = Boxed(s_numbers),
        [typeof(double?)] = [null, .. Boxed(s_numbers)],
        [typeof(int)] = Boxed(s_counts),
        [typeof(int?)] = [null, .. Boxed(s_counts)],
        [typeof(long)] = [0L, 1L, -1L, 12L],
        [typeof(bool)] = [true, false],
        [typeof(string)] = ["x", "(Intercept)", "", null],
        [typeof(IReadOnlyList<double>)] = s_samples,
        [typeof(IReadOnlyList<string>)] = [new[] { "a", "a", "b", "b", "c" }, new[] { "a", "b" }, new[] { "a", "a", "a", "a", "a" }, new[] { "a", "", "b", "b", "c" }, Array.Empty<string>(), null],
        [typeof(IReadOnlyList<IReadOnlyList<double>>)] =
        [
            .. s_tables.Where(t => t is not null).Select(t => (object)t!.Select(r => (IReadOnlyList<double>)[.. r.Where(v => v.HasValue).Select(v => v!.Value)]).ToArray()),
            new IReadOnlyList<double>[] { [1, 2], null! }, new IReadOnlyList<double>[] { [double.NaN], [1, 2] }, null,
        ],
        [typeof(IReadOnlyList<IReadOnlyList<double?>>)] = [.. s_tables, new double?[]?[] { [1, 2], null }],
        [typeof(IReadOnlyList<double?>)] = [new double?[] { 1, 2, null }, new double?[] { 2, null, 3 }, Array.Empty<double?>(), null],
        [typeof(TrialTable)] = [.. s_tables.Select(Table).Where(t => t is not null).Cast<object>(), null],
        [typeof(IndividualChange)] = [IndividualChange.Between(140, 149, 3.2, 21), IndividualChange.Between(3, 3, 1, double.PositiveInfinity), new IndividualChange(2, 0, 5), null],
        [typeof(IReadOnlyList<IndividualChange>)] = [Squad(1, 2, 3, 9, -2), Squad(2, 2, 2, 2), Squad(1), Squad(), new IndividualChange[] { new(1, 0, 3), new(2, 1, 3), new(0, 1, 3), new(0, 1, 3) }, new IndividualChange[] { null!, null!, null!, null! }, null],
        [typeof(ChangePrior)] = [ChangePrior.Stated(0, 4, "stated"), ChangePrior.OfSquad(Squad(1, 2, 3, 9, -2)), ChangePrior.OfSquad(Squad(2, 2, 2, 2)), null],
        [typeof(GroupMoments)] = [new GroupMoments(10, 5, 2), new GroupMoments(2, 0, 0), new GroupMoments(2, 1e70, 1e70), new GroupMoments(3, 0, 1e-70), null],
        [typeof(ModelPoint)] = [new ModelPoint(), new ModelPoint().With("x", 2), null],
        [typeof(IReadOnlyList<RunRule>)] = [new[] { RunRule.OneBeyondThree }, RunRule.All, Array.Empty<RunRule>(), new RunRule[] { null! }, null],
        [typeof(BootstrapOptions)] = [new BootstrapOptions { Resamples = 200 }, new BootstrapOptions { Resamples = 200, Threads = 3 }, new BootstrapOptions { Resamples = 5 }, new BootstrapOptions { Threads = 0 }],
    };

    /// <summary>Arguments of a type; null for a type this test has none of.</summary>
    public static object?[]? Of(Type type) => s_pools.TryGetValue(type, out var pool) ? pool
        : type.IsEnum ? [.. Enum.GetValues(type).Cast<object>(), Enum.ToObject(type, 99)]
        : Nullable.GetUnderlyingType(type) is { IsEnum: true } inner ? [null, .. Enum.GetValues(inner).Cast<object>(), Enum.ToObject(inner, 99)]
        : null;

    private static object?[] Boxed<T>(T[] values) => [.. values.Select(v => (object?)v)];

    private static IndividualChange[] Squad(params double[] differences) => [.. differences.Select(d => new IndividualChange(d, 1.5, 20))];

    private static TrialTable? Table(double?[][]? rows)
    {
        try
        {
            return TrialTable.FromRows(rows!);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
