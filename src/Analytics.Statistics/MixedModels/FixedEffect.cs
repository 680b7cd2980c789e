using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>How degrees of freedom are found.</summary>
public enum DegreesOfFreedomMethod
{
    /// <summary>Satterthwaite's: from how sure the variances are [satterthwaite1946; kuznetsova2017].</summary>
    Satterthwaite,

    /// <summary>Kenward and Roger's, with a standard error that holds the doubt of the variances [kenwardroger1997]. REML only.</summary>
    KenwardRoger,
}

/// <summary>A fixed effect or a weighted sum of them.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Estimate, in the unit of the response (a slope: per unit of the covariate).</param>
/// <param name="StandardError">Standard error in the same unit.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of the t law, not necessarily whole.</param>
/// <param name="T">Value/standard error.</param>
/// <param name="P">Two-sided p for a true value of 0.</param>
/// <param name="Interval">Interval by the t law.</param>
/// <param name="Method">How the degrees of freedom were found.</param>
public sealed record FixedEffect(
    string Name, double Value, double StandardError, double DegreesOfFreedom, double T, double P, Interval Interval, DegreesOfFreedomMethod Method) : Result
{
    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Effect in a linear mixed model",
        Method == DegreesOfFreedomMethod.KenwardRoger ? "t law, degrees of freedom by Kenward and Roger [kenwardroger1997]" : "t law, degrees of freedom by Satterthwaite [kuznetsova2017]", [Line])
    {
        Basis = "the fitted model; its own sheet says how many values and groups",
    };

    internal ResultLine Line => new(Name, Value)
    {
        Interval = Interval, StandardError = StandardError, DegreesOfFreedom = DegreesOfFreedom,
        Note = P < 1e-4 ? "p < 0.0001" : FormattableString.Invariant($"p = {P:0.0000}"),
    };
}
