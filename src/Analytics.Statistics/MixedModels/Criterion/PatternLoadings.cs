namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>Working memory of one pattern at one point.</summary>
internal sealed class PatternLoadings(GroupPattern pattern, int q, int p)
{
    public GroupPattern Pattern { get; } = pattern;

    /// <summary>L⁻¹R with L L' = I + R D₀ R'.</summary>
    public double[] Root { get; } = new double[pattern.Rows * q];

    /// <summary>R'V₀⁻¹[X y] of each block, q × (p + 1).</summary>
    public double[][] H { get; } = [.. pattern.Blocks.Select(_ => new double[q * (p + 1)])];

    /// <summary>H of one block from its whitened rows.</summary>
    public void Project(double[] white, int block, int q, int p1)
    {
        var h = H[block];
        Array.Clear(h);
        for (var i = 0; i < Pattern.Rows; i++)
            for (var k = 0; k < q; k++)
            {
                var root = Root[(i * q) + k];
                for (var j = 0; j < p1; j++) h[(k * p1) + j] += root * white[(i * p1) + j];
            }
    }

    /// <summary>K = R'V₀⁻¹R.</summary>
    public double[] K(int q)
    {
        var k = new double[q * q];
        for (var i = 0; i < Pattern.Rows; i++)
            for (var a = 0; a < q; a++)
                for (var b = 0; b < q; b++) k[(a * q) + b] += Root[(i * q) + a] * Root[(i * q) + b];
        return k;
    }
}
