using Analytics.Statistics.MixedModels.Algebra;

namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// The data as the criterion needs them: every group is turned so that its random design is a triangle. What lies outside the triangle
/// does not feel the random effects and is summed once; what lies inside has at most q rows. No matrix grows with the number of rows,
/// and no sum is ever a difference of two large ones.
/// </summary>
internal sealed class GroupReduction
{
    // Part of a row of R, against a unit column, below which the row is rounding.
    private const double Nothing = 1e-11;

    private readonly Dictionary<PatternKey, GroupPattern> _patterns = [];
    private readonly List<GroupPattern> _all = [];

    private GroupReduction(int rows, int fixedCount, int randomCount, int groups)
    {
        (Rows, P, Q) = (rows, fixedCount, randomCount);
        Within = new double[(P + 1) * (P + 1)];
        OfGroup = new GroupPattern[groups];
        BlockOfGroup = new double[groups][];
    }

    /// <summary>Rows of data.</summary>
    public int Rows { get; }

    /// <summary>Fixed columns.</summary>
    public int P { get; }

    /// <summary>Random effects of a group.</summary>
    public int Q { get; }

    /// <summary>Sums of squares and products of [X y] outside all triangles, lower triangle.</summary>
    public double[] Within { get; }

    /// <summary>Distinct random designs.</summary>
    public IReadOnlyList<GroupPattern> Patterns => _all;

    /// <summary>The pattern of each group.</summary>
    public GroupPattern[] OfGroup { get; }

    /// <summary>The own block of each group, for its random effects.</summary>
    public double[][] BlockOfGroup { get; }

    /// <summary>Reduces the data.</summary>
    /// <param name="fixedColumns">Columns of X.</param>
    /// <param name="randomColumns">Columns of Z.</param>
    /// <param name="y">Responses.</param>
    /// <param name="group">Group of each row, 0 to <paramref name="groups"/> − 1.</param>
    /// <param name="groups">Number of groups.</param>
    public static GroupReduction Of(double[][] fixedColumns, double[][] randomColumns, double[] y, int[] group, int groups)
    {
        var reduction = new GroupReduction(y.Length, fixedColumns.Length, randomColumns.Length, groups);
        var (start, order) = Sorted(group, groups);
        var columns = randomColumns.Concat(fixedColumns).Append(y).ToArray();
        var largest = 0;
        for (var g = 0; g < groups; g++) largest = Math.Max(largest, start[g + 1] - start[g]);
        var block = new double[largest * columns.Length];
        for (var g = 0; g < groups; g++)
        {
            var rows = order.AsSpan(start[g], start[g + 1] - start[g]);
            SortByDesign(rows, randomColumns);
            for (var i = 0; i < rows.Length; i++)
                for (var j = 0; j < columns.Length; j++) block[(i * columns.Length) + j] = columns[j][rows[i]];
            reduction.Add(g, block, rows.Length, columns.Length);
        }

        foreach (var pattern in reduction.Patterns) pattern.Compress();
        return reduction;
    }

    /// <summary>The same data with the coefficient of the last fixed column held: that column times it is taken out of y. Without the blocks of the groups.</summary>
    public GroupReduction WithLastHeld(double coefficient)
    {
        var held = new GroupReduction(Rows, P - 1, Q, 0);
        for (var i = 0; i < P; i++)
            for (var j = 0; j <= i; j++)
            {
                var (a, b) = (i == P - 1 ? P : i, j == P - 1 ? P : j);
                var sum = Sum(a, b);
                if (i == P - 1) sum -= coefficient * Sum(P - 1, b);
                if (j == P - 1) sum -= coefficient * (Sum(a, P - 1) - (i == P - 1 ? coefficient * Sum(P - 1, P - 1) : 0));
                held.Within[(i * P) + j] = sum;
            }

        held._all.AddRange(_all.Select(k => k.WithBlocks(b => HeldRows(b, coefficient))));
        return held;
    }

    private double Sum(int i, int j) => Within[(Math.Max(i, j) * (P + 1)) + Math.Min(i, j)];

    private double[] HeldRows(double[] block, double coefficient)
    {
        var rows = block.Length / (P + 1);
        var held = new double[rows * P];
        for (var r = 0; r < rows; r++)
        {
            block.AsSpan(r * (P + 1), P - 1).CopyTo(held.AsSpan(r * P));
            held[(r * P) + P - 1] = block[(r * (P + 1)) + P] - (coefficient * block[(r * (P + 1)) + P - 1]);
        }

        return held;
    }

    private static (int[] Start, int[] Order) Sorted(int[] group, int groups)
    {
        var start = new int[groups + 1];
        foreach (var g in group) start[g + 1]++;
        for (var g = 0; g < groups; g++) start[g + 1] += start[g];
        var next = start.AsSpan(0, groups).ToArray();
        var order = new int[group.Length];
        for (var i = 0; i < group.Length; i++) order[next[group[i]]++] = i;
        return (start, order);
    }

    // The same days in another order are the same design.
    private static void SortByDesign(Span<int> rows, double[][] random)
    {
        int Compare(int a, int b)
        {
            foreach (var column in random)
                if (column[a] != column[b]) return column[a].CompareTo(column[b]);
            return 0;
        }

        for (var i = 1; i < rows.Length; i++)
        {
            if (Compare(rows[i - 1], rows[i]) <= 0) continue;
            rows.Sort(Compare);
            return;
        }
    }

    private void Add(int group, double[] block, int rows, int columns)
    {
        Householder.Triangularise(block, rows, columns, Q);
        var inside = 0;
        for (var i = 0; i < Math.Min(rows, Q); i++)
        {
            var size = 0.0;
            for (var j = i; j < Q; j++) size = Math.Max(size, Math.Abs(block[(i * columns) + j]));
            if (size > Nothing * Math.Sqrt(rows)) Array.Copy(block, i * columns, block, inside++ * columns, columns);
            else AddWithin(block.AsSpan((i * columns) + Q, P + 1));
        }

        for (var i = Math.Min(rows, Q); i < rows; i++) AddWithin(block.AsSpan((i * columns) + Q, P + 1));
        var triangle = new double[inside * Q];
        var own = new double[inside * (P + 1)];
        for (var i = 0; i < inside; i++)
        {
            block.AsSpan(i * columns, Q).CopyTo(triangle.AsSpan(i * Q));
            block.AsSpan((i * columns) + Q, P + 1).CopyTo(own.AsSpan(i * (P + 1)));
        }

        var key = new PatternKey(triangle);
        if (!_patterns.TryGetValue(key, out var pattern))
        {
            _patterns.Add(key, pattern = new(triangle, inside));
            _all.Add(pattern);
        }

        pattern.Count++;
        pattern.Blocks.Add(own);
        (OfGroup[group], BlockOfGroup[group]) = (pattern, own);
    }

    private void AddWithin(ReadOnlySpan<double> row)
    {
        for (var i = 0; i < row.Length; i++)
        {
            var x = row[i];
            if (x == 0) continue;
            var sums = Within.AsSpan(i * row.Length, i + 1);
            for (var j = 0; j <= i; j++) sums[j] += x * row[j];
        }
    }

    /// <summary>A triangle as a key: equal to the bit.</summary>
    private readonly struct PatternKey(double[] triangle) : IEquatable<PatternKey>
    {
        private readonly double[] _triangle = triangle;

        public bool Equals(PatternKey other) => _triangle.AsSpan().SequenceEqual(other._triangle);

        public override bool Equals(object? obj) => obj is PatternKey other && Equals(other);

        public override int GetHashCode()
        {
            var hash = _triangle.Length;
            foreach (var v in _triangle) hash = HashCode.Combine(hash, v.GetHashCode());
            return hash;
        }
    }
}
