namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// Groups measured at the same points: they share the triangle R of their random design, so its factor is computed once for all of them.
/// </summary>
internal sealed class GroupPattern(double[] triangle, int rows)
{
    /// <summary>R, rows × q, row by row.</summary>
    public double[] Triangle { get; } = triangle;

    /// <summary>Rows of R: as many directions as the random effects can be told apart in.</summary>
    public int Rows { get; } = rows;

    /// <summary>Groups that share it.</summary>
    public int Count { get; set; }

    /// <summary>Blocks [X y] turned into the directions of R, rows × (p + 1) each, with the same sums of squares and products as those of all groups.</summary>
    public List<double[]> Blocks { get; private set; } = [];

    /// <summary>The same pattern with other blocks.</summary>
    public GroupPattern WithBlocks(Func<double[], double[]> change)
        => new(Triangle, Rows) { Count = Count, Blocks = [.. Blocks.Select(change)] };

    /// <summary>
    /// Every sum over groups is a sum of products of two entries of one block. A triangle of the stacked blocks has the same sums,
    /// and no more rows than a block has entries: thousands of groups shrink to a handful.
    /// </summary>
    public void Compress()
    {
        var width = Blocks.Count == 0 ? 0 : Blocks[0].Length;
        if (width is 0 or > 64 || Blocks.Count < 2 * width) return;
        var stack = new double[Blocks.Count * width];
        for (var i = 0; i < Blocks.Count; i++) Blocks[i].CopyTo(stack, i * width);
        Algebra.Householder.Triangularise(stack, Blocks.Count, width, width);
        Blocks = [.. Enumerable.Range(0, width).Select(i => stack.AsSpan(i * width, width).ToArray())];
    }
}
