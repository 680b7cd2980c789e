namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>One row of r-and-published.tsv.</summary>
/// <param name="Case">Which example.</param>
/// <param name="Quantity">Which figure of it.</param>
/// <param name="Value">The figure.</param>
/// <param name="Call">Where it comes from: an R call or a source.</param>
internal sealed record OracleValue(string Case, string Quantity, double Value, string Call);

/// <summary>One comparison.</summary>
internal sealed record AccuracyCheck(OracleValue Row, double Actual, double Relative, double Absolute, string Why, bool Published = false)
{
    /// <summary>Whether the oracle itself is exact enough for the usual difference; else <see cref="Why"/> says why not.</summary>
    public bool IsStrict => Relative <= AccuracyBook.Usual && Absolute == 0;

    private double Difference => Math.Abs(Actual - Row.Value);

    /// <summary>Whether the difference is allowed. NaN never is.</summary>
    public bool Holds => Difference <= Math.Max(Relative * Math.Abs(Row.Value), Absolute) || Actual.Equals(Row.Value);

    /// <summary>Decimal digits in agreement, at most 16; of the value itself where it is 0.</summary>
    public double Digits
    {
        get
        {
            if (Difference == 0) return 16;
            var digits = -Math.Log10(Row.Value == 0 ? Difference : Difference / Math.Abs(Row.Value));
            return double.IsNaN(digits) ? 0 : Math.Clamp(digits, 0, 16);
        }
    }

    public override string ToString()
        => FormattableString.Invariant($"{Row.Case} {Row.Quantity}: expected {Row.Value:R}, got {Actual:R} ({Digits:0.0} digits)");
}
