namespace Analytics.Statistics.MixedModels.Design;

/// <summary>Checks of columns; every message says which, where and what to do.</summary>
internal static class DesignChecks
{
    public static double[] Numbers(IReadOnlyList<double> values, int rows, string name)
    {
        Require.Sample(values, 1, name);
        Length(values.Count, rows, name);
        return [.. values];
    }

    public static string[] Labels(IReadOnlyList<string> values, int rows, string name)
    {
        ArgumentNullException.ThrowIfNull(values, name);
        Length(values.Count, rows, name);
        for (var i = 0; i < values.Count; i++)
        {
            if (string.IsNullOrWhiteSpace(values[i]))
                throw new ArgumentException($"{name}[{i}] is empty; every row needs a label. Leave a row without one out.", name);
        }

        return [.. values];
    }

    private static void Length(int count, int rows, string name)
    {
        if (count != rows) throw new ArgumentException($"{name} holds {count} values for {rows} rows; one each is needed.", name);
    }
}
