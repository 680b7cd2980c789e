using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>A result that carries the cautions of collisions and prints them with its figures, always.</summary>
public abstract record CautionedResult : Result
{
    private protected CautionedResult(CollisionCaution caution)
    {
        ArgumentNullException.ThrowIfNull(caution);
        Caution = caution;
    }

    /// <summary>The cautions.</summary>
    public CollisionCaution Caution { get; }

    /// <summary>The figures with the cautions under them.</summary>
    public sealed override ResultSheet Sheet()
    {
        var figures = Figures();
        return figures with { Remarks = [.. figures.Remarks, .. Caution.Points] };
    }

    private protected abstract ResultSheet Figures();
}
