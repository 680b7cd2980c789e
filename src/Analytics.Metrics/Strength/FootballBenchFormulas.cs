using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Strength;

/// <summary>Equations for bench press repetitions with 225 lb, made from college football players.</summary>
/// <remarks>The test follows a squad well enough and a single player poorly [mann2015rtf].</remarks>
public static class FootballBenchFormulas
{
    private static readonly Mass Load = Mass.FromPounds(225);

    /// <summary>Mayhew et al. 1999: bench press repetitions with 225 lb, college football.</summary>
    public static OneRepMaxFormula Mayhew { get; } = new()
    {
        Name = "Mayhew et al. 225 lb",
        Expression = "226.7 lb + 7.1 lb r, w = 225 lb",
        SourceKey = "mayhew1999",
        Population = "142 college football players",
        ValidRange = new(1, 30),
        Evidence = "coefficients from memory; r 0.96, standard error of estimate 14.1 lb (from memory)",
        OnlyLift = Lifts.BenchPress,
        OnlyLoad = Load,
        Equation = (_, r) => Mass.FromPounds(226.7 + 7.1 * r).Kilograms,
    };

    /// <summary>Hetzler et al. 2010: repetitions with 225 lb and two arm measures of the player.</summary>
    /// <remarks>
    /// The published sample means (1RM 309.7 lb, 14.1 repetitions) only fit if "arm length" is an upper-arm segment of
    /// about 33–40 cm (inferred, not seen in the paper); a whole-arm length gives absurd results and is refused.
    /// </remarks>
    /// <param name="armCircumference">Upper-arm girth, 20 to 60 cm.</param>
    /// <param name="upperArmLength">Length of the upper arm, 28 to 45 cm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure out of range.</exception>
    public static OneRepMaxFormula Hetzler(Length armCircumference, Length upperArmLength)
    {
        var girth = InRange(armCircumference, 20, 60, nameof(armCircumference), "The arm girth");
        var length = InRange(upperArmLength, 28, 45, nameof(upperArmLength), "The upper-arm length (shoulder to elbow, not the whole arm)");
        return new()
        {
            Name = "Hetzler et al. 225 lb",
            Expression = "299.08 lb + 2.47 lb/cm arm girth − 4.60 lb/cm arm length + 5.84 lb r, w = 225 lb",
            SourceKey = "hetzler2010",
            Population = "87 Division I-A college football players",
            ValidRange = new(1, 30),
            Evidence = "printed, R² 0.90, standard error of estimate 18.3 lb; which arm length is meant was inferred",
            OnlyLift = Lifts.BenchPress,
            OnlyLoad = Load,
            Equation = (_, r) => Mass.FromPounds(299.08 + 2.47 * girth - 4.60 * length + 5.84 * r).Kilograms,
        };
    }

    private static double InRange(Length value, double low, double high, string name, string what)
        => value.Centimetres >= low && value.Centimetres <= high ? value.Centimetres
            : throw new ArgumentOutOfRangeException(name, value, string.Create(CultureInfo.InvariantCulture, $"{what} must be {low} to {high} cm; got {value.Centimetres:0.#} cm."));
}
