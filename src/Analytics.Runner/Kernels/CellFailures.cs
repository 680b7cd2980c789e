using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Runner.Outputs;
using Microsoft.DotNet.Interactive.Events;

namespace Analytics.Runner.Kernels;

/// <summary>Says in plain words why a cell failed and on which of its lines.</summary>
internal static partial class CellFailures
{
    public static CellFailure From(CommandFailed failed)
    {
        return failed.Exception switch
        {
            CellCompileException compile => new CellFailure("CompileError", compile.Message, compile.Line, []),
            { } exception => FromException(exception),
            null => new CellFailure("KernelError", failed.Message, null, []),
        };
    }

    private static CellFailure FromException(Exception exception)
    {
        // The wrapper says nothing the cause does not say better.
        while (exception is System.Reflection.TargetInvocationException or AggregateException { InnerExceptions.Count: 1 } && exception.InnerException is { } inner)
            exception = inner;
        var places = CellPlace().Matches(exception.StackTrace ?? "")
            .Select(m => (Label: m.Groups["label"].Value, Line: int.Parse(m.Groups["line"].ValueSpan, CultureInfo.InvariantCulture)))
            .ToList();
        // The last place is in the cell that ran; earlier ones may be functions of other cells.
        var line = places.Count > 0 ? places[^1].Line : (int?)null;
        var trace = places.Select(p => string.Create(CultureInfo.InvariantCulture, $"  at {p.Label}, line {p.Line}"));
        return new CellFailure(exception.GetType().Name, exception.Message, line, [.. trace]);
    }

    // The stack trace is the only place where the run time tells source lines; file names are ours.
    [GeneratedRegex(@" in (?:.*[/\\])?(?<label>cell \d+|settings cell|[^/\\:]+\.csx|[^/\\:]+\.ipynb, cell \d+):line (?<line>\d+)\s*$", RegexOptions.Multiline)]
    private static partial Regex CellPlace();
}
