using System.Globalization;
using Analytics.Metrics.FieldPower;
using Analytics.Metrics.Jumping;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Catalogue;

/// <summary>The test a trial is of and the scale it was measured on.</summary>
/// <param name="Test">The test, for example <c>jump Drop</c> or <c>lift back_squat</c>.</param>
/// <param name="Name">The scale as a report names it; empty where the test has one only.</param>
internal sealed record TrialScale(string Test, string Name)
{
    public static TrialScale Of(Trial trial) => trial switch
    {
        SprintTrial sprint => new("sprint", SprintSeries.Of(sprint.Timing, sprint.Start)),
        JumpTrial { Kind: JumpKind.Drop or JumpKind.Hurdle } jump => new($"jump {jump.Kind}", ReboundMetrics.Series(jump, JumpReading.Scale(jump))),
        JumpTrial jump => new($"jump {jump.Kind}", JumpReading.Scale(jump)),
        AgilityTrial run => new($"run {run.Test}", SprintSeries.Of(run.Timing)),
        ThrowTrial thrown => new($"throw {thrown.Throw}", ThrowMetrics.Series(thrown)),
        StairTrial stairs => new("stairs", string.Create(CultureInfo.InvariantCulture, $"rise {stairs.Rise.Metres:0.00} m")),
        ContactTrial contact => new("contact", Contact.ContactMetrics.Series(contact)),
        LiftSet set => new($"lift {set.Lift}", ""),
        _ => new(trial.GetType().Name, ""),
    };
}
