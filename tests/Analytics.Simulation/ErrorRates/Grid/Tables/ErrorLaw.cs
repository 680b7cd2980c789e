using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.ErrorRates.Grid.Tables;

/// <summary>x = mean + athlete + true change + common shift + error, for one athlete; the typical error of the squad is 1.</summary>
public static class ErrorLaw
{
    public const double Mean = 20, Share = 0.05, Correlation = 0.4, UnevenShape = 0.4, SkewShape = 0.5, ShiftSd = 0.5;

    /// <summary>Values of a new athlete.</summary>
    /// <param name="kind">Kind of error.</param>
    /// <param name="spread">SD between athletes, in typical errors.</param>
    /// <param name="truth">What is added on each occasion: true change and common shift, in typical errors.</param>
    /// <param name="random">The draw's stream.</param>
    /// <param name="together">Whether the occasions are neighbours, so that serial errors show.</param>
    public static double[] Athlete(ErrorKind kind, double spread, ReadOnlySpan<double> truth, RandomNumbers random, bool together = true)
    {
        var values = new double[truth.Length];
        var own = spread * random.Normal();
        var size = kind == ErrorKind.Uneven ? Math.Exp(UnevenShape * random.Normal() - UnevenShape * UnevenShape) : 1;
        double last = 0;
        for (var j = 0; j < values.Length; j++)
        {
            var z = random.Normal();
            if (kind == ErrorKind.Serial && together && j > 0) z = Correlation * last + Math.Sqrt(1 - Correlation * Correlation) * z;
            last = z;
            values[j] = kind switch
            {
                ErrorKind.Proportional => (Mean * Math.Exp(own / Mean) + truth[j]) * Math.Exp(Share * z),
                ErrorKind.Skewed => Mean + own + truth[j] + Skewed(z),
                _ => Mean + own + truth[j] + size * z,
            };
        }

        return values;
    }

    /// <summary>Root mean square over athletes of the error of one occasion.</summary>
    public static double TypicalError(ErrorKind kind, double spread) => kind == ErrorKind.Proportional
        ? Math.Sqrt(Mean * Mean * Math.Exp(2 * Square(spread / Mean)) * Factor * (Factor - 1))
        : 1;

    /// <summary>Variance between athletes.</summary>
    public static double Between(ErrorKind kind, double spread) => kind == ErrorKind.Proportional
        ? Mean * Mean * Math.Exp(Square(spread / Mean)) * (Math.Exp(Square(spread / Mean)) - 1) * Factor
        : spread * spread;

    private static double Factor => Math.Exp(Share * Share);

    /// <summary>Log-normal with mean 0 and SD 1.</summary>
    private static double Skewed(double z)
    {
        const double Squared = SkewShape * SkewShape;
        return (Math.Exp(SkewShape * z) - Math.Exp(Squared / 2)) / Math.Sqrt(Math.Exp(Squared) * (Math.Exp(Squared) - 1));
    }

    private static double Square(double x) => x * x;
}
