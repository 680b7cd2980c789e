using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.ErrorRates.Grid.Verdicts;

/// <summary>An athlete before and after, and the typical error a separate retest of df + 1 athletes found.</summary>
/// <param name="Case">The case.</param>
/// <param name="TypicalError">Estimate; the truth when it is known.</param>
/// <param name="Before">Mean of the baseline tests.</param>
/// <param name="Unchanged">What the later test would have shown without a true change.</param>
public readonly record struct ChangeDraw(ChangeCase Case, double TypicalError, double Before, double Unchanged)
{
    /// <summary>Reliability 0.90: the spread does not enter, except where errors grow with the value.</summary>
    private const double Spread = 3;

    public static ChangeDraw Draw(ChangeCase the, RandomNumbers random)
    {
        var error = double.IsPositiveInfinity(the.DegreesOfFreedom) ? ErrorLaw.TypicalError(the.Errors, Spread) : Retest(the, random);
        Span<double> none = stackalloc double[the.Baseline + 1];
        none.Clear();
        var values = ErrorLaw.Athlete(the.Errors, Spread, none, random, together: false);
        double before = 0;
        for (var i = 0; i < the.Baseline; i++) before += values[i] / the.Baseline;
        return new(the, error, before, values[^1]);
    }

    /// <summary>SD of the differences of df + 1 athletes, over √2; what the library finds for a pair of trials, without its table.</summary>
    private static double Retest(ChangeCase the, RandomNumbers random)
    {
        var athletes = (int)the.DegreesOfFreedom + 1;
        ReadOnlySpan<double> none = [0, 0];
        double sum = 0, squares = 0;
        for (var i = 0; i < athletes; i++)
        {
            var pair = ErrorLaw.Athlete(the.Errors, Spread, none, random);
            var d = pair[1] - pair[0];
            sum += d;
            squares += d * d;
        }

        return Math.Sqrt((squares - sum * sum / athletes) / the.DegreesOfFreedom / 2);
    }
}
