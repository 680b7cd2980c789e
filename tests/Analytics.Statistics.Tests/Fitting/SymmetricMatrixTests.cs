using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

public class SymmetricMatrixTests
{
    private static readonly SymmetricMatrix M = SymmetricMatrix.From(2, (i, j) => i == j ? 4 + (5 * i) : 3); // [4 3; 3 9]

    [Fact]
    public void QuadraticForm_IsTheDeltaMethodVariance()
        => Assert.Equal(4 + (2 * 2 * 3) + (4 * 9), M.QuadraticForm([1, 2])); // 1·4·1 + 2·(1·3·2) + 2·9·2 = 52

    [Fact]
    public void Correlation_And_Times() // 3/sqrt(4·9)
    {
        Assert.Equal(0.5, M.Correlation(0, 1));
        Assert.Equal(18, M.Times(2)[1, 1]);
    }

    [Fact]
    public void Times_Negative_IsRefused()
        => Assert.Equal("by", Assert.Throws<ArgumentOutOfRangeException>(() => M.Times(-1)).ParamName);

    [Fact]
    public void Access_Outside_NamesTheCell()
    {
        Assert.Contains("Row 2, column 0", Assert.Throws<ArgumentOutOfRangeException>(() => M[2, 0]).Message, StringComparison.Ordinal);
        Assert.Contains("3 entries", Assert.Throws<ArgumentException>(() => M.QuadraticForm([1, 2, 3])).Message, StringComparison.Ordinal);
    }
}
