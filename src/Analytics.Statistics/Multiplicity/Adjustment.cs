namespace Analytics.Statistics.Multiplicity;

/// <summary>How p values are corrected for their number.</summary>
public enum Adjustment
{
    /// <summary>m p. Chance of any false rejection at most α, whatever hangs together.</summary>
    Bonferroni,

    /// <summary>Step-down Bonferroni [holm1979]: the same guarantee, never fewer rejections.</summary>
    Holm,

    /// <summary>Step-up [hochberg1988]: the same guarantee for independent tests, and for many kinds of positive dependence.</summary>
    Hochberg,

    /// <summary>False discovery rate at most α for independent or positively dependent tests [benjaminihochberg1995].</summary>
    BenjaminiHochberg,

    /// <summary>False discovery rate at most α whatever hangs together [benjaminiyekutieli2001].</summary>
    BenjaminiYekutieli,
}
