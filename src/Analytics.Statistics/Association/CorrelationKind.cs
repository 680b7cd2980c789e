namespace Analytics.Statistics.Association;

/// <summary>Which correlation.</summary>
public enum CorrelationKind
{
    /// <summary>Of the values: how close to a straight line.</summary>
    Pearson,

    /// <summary>Of the ranks, ties sharing their mean rank [spearman1904].</summary>
    Spearman,

    /// <summary>Kendall's tau-b: pairs that go the same way less pairs that go opposite ways [kendall1975].</summary>
    Kendall,
}

/// <summary>Variance of a correlation on Fisher's z scale.</summary>
public enum CorrelationVariance
{
    /// <summary>Pearson: 1/(n − 3) [fisher1921].</summary>
    Fisher,

    /// <summary>Spearman: 1.06/(n − 3); Kendall: 0.437/(n − 4) [fieller1957].</summary>
    Fieller,

    /// <summary>Spearman: (1 + r²/2)/(n − 3) [bonettwright2000]; holds its level further out than <see cref="Fieller"/>.</summary>
    BonettWright,
}
