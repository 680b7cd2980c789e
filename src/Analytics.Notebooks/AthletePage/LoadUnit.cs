using Analytics.Notebooks.Look;
using Analytics.Quantities;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The unit bars are loaded in, with the smallest step.</summary>
/// <param name="Symbol"><c>lb</c> or <c>kg</c>.</param>
/// <param name="PerKilogram">Units in one kilogram.</param>
/// <param name="Step">Smallest step, in the unit.</param>
internal sealed record LoadUnit(string Symbol, double PerKilogram, double Step)
{
    private const double RoundingError = 1e-9;

    public static LoadUnit Of(SeasonSettings settings, double step)
        => settings.MassUnit == "lb" ? new("lb", 1 / UnitFactors.KilogramsPerPound, step) : new("kg", 1, step);

    /// <summary>The heaviest load that can be put on, not above the one given. In the unit.</summary>
    public double Down(double kilograms) => Math.Floor(kilograms * PerKilogram / Step + RoundingError) * Step;

    /// <summary>A load that can be put on, with its unit: no more decimals than the step has.</summary>
    public string Text(double load) => Figures.Plain(load, StepDecimals, Symbol);

    /// <summary>A mass that was lifted or estimated, with its unit.</summary>
    public string Lifted(double kilograms) => Figures.Plain(kilograms * PerKilogram, Decimals, Symbol);

    public int Decimals => Symbol == "lb" ? 0 : 1;

    private int StepDecimals => Enumerable.Range(0, 3).FirstOrDefault(d => Math.Abs(Step - Math.Round(Step, d)) < RoundingError, 3);
}
