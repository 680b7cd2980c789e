using Analytics.Quantities;

namespace Analytics.Metrics.Sketching;

/// <summary>Says in plain words what went wrong in a formula.</summary>
internal static class TroubleText
{
    public const string NotFinite = "the result is not a finite number: a division by 0, or a root or logarithm of a negative number. Return null where the formula makes no sense.";

    public static (TroubleKind Kind, string Message) Of(Exception exception, string unit) => exception switch
    {
        UnitMismatchException => (TroubleKind.Unit, $"{exception.Message}. Change the formula, or the sketch's unit, which is {unit}."),
        NullReferenceException => (TroubleKind.Missing, "the formula uses something that is not there. Ask with ?. or return null when it is missing."),
        InvalidOperationException e when e.Message.Contains("Nullable", StringComparison.Ordinal) => (TroubleKind.Missing, "the formula takes the .Value of something that was not measured. Leave .Value out, or return null when it is missing."),
        InvalidOperationException e when e.Message.Contains("Sequence contains no", StringComparison.Ordinal) => (TroubleKind.Missing, "the formula takes the first, best or mean of an empty list. Return null when there is no such trial."),
        DivideByZeroException => (TroubleKind.NotFinite, NotFinite),
        ArgumentOutOfRangeException e when e.Message.Contains("needs a divisor other than 0", StringComparison.Ordinal) => (TroubleKind.NotFinite, NotFinite),
        KeyNotFoundException => (TroubleKind.Failed, $"{char.ToLowerInvariant(exception.Message[0])}{FormulaText.OneLine(exception.Message[1..])}"),
        _ => (TroubleKind.Failed, $"the formula failed: {FormulaText.OneLine(exception.Message).TrimEnd('.')} ({exception.GetType().Name})."),
    };
}
