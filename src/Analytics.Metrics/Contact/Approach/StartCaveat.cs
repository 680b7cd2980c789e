using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Contact;

/// <summary>What a start does to a time constant.</summary>
public enum StartCaveatKind
{
    /// <summary>The body moved before the clock started and the fit does not know it: the time constant is partly an artefact and comes out short.</summary>
    FlyingStart,

    /// <summary>Clock started by a hand leaving the ground: the time constant is partly an artefact, and times from first movement come out short.</summary>
    HandLift,

    /// <summary>Reaction is inside the times and the fit does not know it: the time constant comes out long.</summary>
    ReactionInside,
}

/// <summary>A remark that travels with every approach made from a fit.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Text">In a sentence.</param>
public sealed record StartCaveat(StartCaveatKind Kind, string Text)
{
    /// <summary>The remark for a start and the model fitted to it; null when first movement started the clock or the model takes the start in.</summary>
    /// <param name="start">What started the clock.</param>
    /// <param name="model">What the fit assumed.</param>
    public static StartCaveat? For(StartType start, StartModel model) => (start, model) switch
    {
        (StartType.ThreePointHand, _) => new(StartCaveatKind.HandLift,
            "The clock started when the hand left the ground: part of a short time constant is an artefact of that start. Compare only with runs of the same start."),
        (StartType.StandingBeam, StartModel.Still or StartModel.Offset) => new(StartCaveatKind.FlyingStart,
            "The body was moving when the beam broke and the fit does not know it: the time constant comes out short, early speed and momentum high. Compare only with runs of the same start."),
        (StartType.Signal, StartModel.Still or StartModel.RunIn) => new(StartCaveatKind.ReactionInside,
            "Reaction time is inside the splits and the fit does not know it: the time constant comes out long, early speed and momentum low. Compare only with runs of the same start."),
        _ => null,
    };
}
