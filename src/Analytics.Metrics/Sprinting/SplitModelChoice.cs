using System.Globalization;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Sprinting;

/// <summary>
/// Which start model a report fits, by what started the clock and by the number of gates, and what stays biased.
/// <list type="bullet">
/// <item>First movement: still start. Nothing is unseen.</item>
/// <item>Standing start through a beam: the body moves before the beam breaks, so run-in from 4 gates on; when the run-in comes out as nothing, still start.</item>
/// <item>Three-point hand lift: the hand may leave before or after the body moves, so a clock offset of either sign from 4 gates on.
/// Where the body surely moves first a run-in has less bias and more scatter; where it does not, it fails.</item>
/// <item>Signal: reaction is inside, so a clock offset from 4 gates on.</item>
/// <item>Three gates leave room for V and T only: still start, with the bias stated.</item>
/// </list>
/// Sizes of bias and error at 4 gates are in docs/methods/sprinting.md, with the command that made them.
/// </summary>
/// <param name="Model">The model to fit.</param>
/// <param name="Caveat">What the reader must know; null when nothing.</param>
public sealed record SplitModelChoice(StartModel Model, string? Caveat)
{
    private const string EarlyBody = "the body moves before the clock starts and {0} gates cannot show it: top speed and time constant come out low, "
        + "early speed and momentum high (for a run-in of 0.3 m: about 0.25 m/s, 0.4 s and 0.4 m/s)";

    private const string LateBody = "reaction time is inside and {0} gates cannot separate it: top speed and time constant come out high, "
        + "early speed and momentum low (for 0.15 s: about 0.25 m/s, 0.3 s and 0.25 m/s)";

    private const string HandLift = "three-point start with {0} gates: part of a short time constant is the hand leaving after the body moves, "
        + "and early speed and momentum come out high; compare only within this start and these gates";

    /// <summary>The choice for a run.</summary>
    /// <param name="start">What started the clock.</param>
    /// <param name="gates">Gates with a time.</param>
    public static SplitModelChoice For(StartType start, int gates) => start switch
    {
        StartType.FirstMovement => new(StartModel.Still, null),
        StartType.StandingBeam => gates >= 4 ? new(StartModel.RunIn, null) : new(StartModel.Still, Fill(EarlyBody, gates)),
        StartType.ThreePointHand => gates >= 4 ? new(StartModel.Offset, null) : new(StartModel.Still, Fill(HandLift, gates)),
        StartType.Signal => gates >= 4 ? new(StartModel.Offset, null) : new(StartModel.Still, Fill(LateBody, gates)),
        _ => throw new ArgumentOutOfRangeException(nameof(start), start, $"Unknown start type {start}."),
    };

    private static string Fill(string text, int gates) => string.Format(CultureInfo.InvariantCulture, text, gates);
}
