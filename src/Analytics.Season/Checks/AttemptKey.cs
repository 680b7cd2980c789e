using Analytics.Metrics.Trials;

namespace Analytics.Season.Checks;

/// <summary>What makes an attempt of a day unique. Trials that differ here are different attempts, even under the same number.</summary>
internal readonly record struct AttemptKey(string AthleteId, Type Kind, string Test, int Variant, int Size, int Attempt)
{
    /// <summary>The key of a trial.</summary>
    public static AttemptKey Of(Trial trial) => trial switch
    {
        LiftSet t => Key(t, t.Lift),
        JumpTrial t => Key(t, "", (int)t.Kind * 16 + (int)t.Method, (int)Math.Round(t.ObstacleHeight?.Millimetres ?? 0)),
        SprintTrial t => Key(t, "", (int)t.Timing * 16 + (int)t.Start),
        AgilityTrial t => Key(t, t.Test, (int)t.Timing * 4 + OnSide(t.Side)),
        ThrowTrial t => Key(t, t.Throw, OnSide(t.Side), (int)Math.Round(t.Ball.Grams)),
        _ => Key(trial, ""),
    };

    private static AttemptKey Key(Trial trial, string test, int variant = 0, int size = 0) => new(trial.AthleteId, trial.GetType(), test, variant, size, trial.Attempt);

    private static int OnSide(Side? side) => side is { } known ? 1 + (int)known : 0;
}
