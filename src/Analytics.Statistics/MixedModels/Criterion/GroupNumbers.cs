namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>Groups numbered in order of first appearance.</summary>
internal sealed class GroupNumbers
{
    public GroupNumbers(string[] labels)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var names = new List<string>();
        OfRow = new int[labels.Length];
        var (last, number) = ((string?)null, -1);
        for (var i = 0; i < labels.Length; i++)
        {
            // Rows of a group mostly stand together.
            if (!ReferenceEquals(labels[i], last) && !numbers.TryGetValue(labels[i], out number))
            {
                numbers.Add(labels[i], number = names.Count);
                names.Add(labels[i]);
            }

            (last, OfRow[i]) = (labels[i], number);
        }

        Names = names;
        Sizes = new int[names.Count];
        foreach (var g in OfRow) Sizes[g]++;
    }

    public int[] OfRow { get; }

    public int[] Sizes { get; }

    public IReadOnlyList<string> Names { get; }
}
