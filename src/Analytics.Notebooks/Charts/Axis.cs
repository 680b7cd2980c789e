namespace Analytics.Notebooks.Charts;

/// <summary>Where better values lie on an axis.</summary>
public enum Better
{
    /// <summary>No direction is better by itself: no arrow is drawn.</summary>
    Neither,

    /// <summary>Higher values are better.</summary>
    Higher,

    /// <summary>Lower values are better.</summary>
    Lower,
}

/// <summary>The axis of a chart.</summary>
/// <param name="Quantity">What is measured, for example <c>back squat, estimated 1RM</c>.</param>
/// <param name="Unit">Unit symbol; empty for none.</param>
/// <param name="Decimals">Decimals of the numbers shown beside the marks, 0 to 9.</param>
/// <param name="Better">Where better values lie; never assumed.</param>
public sealed record Axis(string Quantity, string Unit, int Decimals = 0, Better Better = Better.Neither)
{
    /// <summary>Quantity and unit as the axis shows them.</summary>
    public string Title => Unit.Length == 0 ? Quantity : Quantity.Length == 0 ? Unit : $"{Quantity}, {Unit}";

    internal string Arrow => Better switch { Better.Higher => "better \u2192", Better.Lower => "\u2190 better", _ => string.Empty };
}
