using Analytics.Runner.Outputs;
using Analytics.Season;

namespace Analytics.Cli.Commands;

/// <summary>Why a cell failed: the kind of error and its message, or the message alone where it is written for the reader.</summary>
internal static class FailureText
{
    public static string Of(CellFailure failure)
        => failure.Kind == nameof(SeasonException) ? failure.Message : $"{failure.Kind}: {failure.Message}";
}
