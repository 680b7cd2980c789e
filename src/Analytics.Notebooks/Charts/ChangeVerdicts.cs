using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>How a verdict is said and coloured, the same in pictures and in tables.</summary>
internal static class ChangeVerdicts
{
    public static string Words(this ChangeVerdict verdict) => verdict switch
    {
        ChangeVerdict.ClearGain => "clear gain",
        ChangeVerdict.ClearLoss => "clear loss",
        ChangeVerdict.ClearlyUp => "clearly up",
        ChangeVerdict.ClearlyDown => "clearly down",
        ChangeVerdict.TooSmallToMatter => "too small to matter",
        ChangeVerdict.NoErrorKnown => "no error known",
        _ => "cannot tell yet",
    };

    public static Tone Tone(this ChangeVerdict verdict)
        => verdict switch { ChangeVerdict.ClearGain => Look.Tone.Gain, ChangeVerdict.ClearLoss => Look.Tone.Loss, _ => Look.Tone.Plain };
}
