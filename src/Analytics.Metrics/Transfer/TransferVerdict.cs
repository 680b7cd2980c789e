namespace Analytics.Metrics.Transfer;

/// <summary>What can be said of one pair, the number of pairs taken into account. Never that one measure made the other.</summary>
public enum TransferVerdict
{
    /// <summary>Too few athletes or days, or values that do not vary.</summary>
    NotComputed,

    /// <summary>No evidence either way.</summary>
    NotTold,

    /// <summary>True gains do not differ discernibly between players in one of the measures or both, so nothing is seen that could go together.</summary>
    NoSpreadSeen,

    /// <summary>The data speak against a strong link: the upper limit is low.</summary>
    AgainstStrongLink,

    /// <summary>Gains went with gains.</summary>
    WentTogether,

    /// <summary>Gains in one went with losses, or smaller gains, in the other.</summary>
    WentOpposite,
}
