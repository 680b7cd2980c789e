using System.Globalization;
using Analytics.Runner.Outputs;
using Analytics.Season;

namespace Analytics.Cli.Commands;

/// <summary>Why a cell failed: the kind of error and its message, or the message alone where it is written for the reader.</summary>
internal static class FailureText
{
    /// <summary>Where a notebook or a page stopped, and why.</summary>
    public static string Stopped(string what, string? cell, CellFailure failure)
        => string.Create(CultureInfo.InvariantCulture, $"{what} stopped at {cell}{(failure.Line is { } line ? $", line {line}" : "")}: {Of(failure)}");

    public static string Of(CellFailure failure)
        => failure.Kind == nameof(SeasonException) ? failure.Message : $"{failure.Kind}: {failure.Message}";
}
