using System.Globalization;
using Microsoft.DotNet.Interactive;
using CompilerMessage = Microsoft.CodeAnalysis.Diagnostic;

namespace Analytics.Runner.Kernels;

/// <summary>The code of a cell does not compile.</summary>
/// <param name="errors">What the compiler says, at least one error.</param>
internal sealed class CellCompileException(IReadOnlyList<CompilerMessage> errors) : Exception(Text(errors[0]))
{
    /// <summary>Line of the cell, from 1; null when the mistake is in a file the cell loads.</summary>
    public int? Line { get; } = IsInCell(errors[0]) ? errors[0].Location.GetMappedLineSpan().StartLinePosition.Line + 1 : null;

    /// <summary>All errors as the kernel tells them; lines are those of the cell, counted from 0.</summary>
    public IReadOnlyList<Diagnostic> Errors { get; } = [.. errors.Select(ToKernel)];

    // One mistake often draws more messages after it; the first is the one to mend.
    private static string Text(CompilerMessage error)
    {
        var text = $"{error.Id}: {error.GetMessage(CultureInfo.InvariantCulture)}";
        var place = error.Location.GetLineSpan();
        return IsInCell(error) || place.Path.Length == 0 ? text
            : string.Create(CultureInfo.InvariantCulture, $"{text} ({Path.GetFileName(place.Path)}, line {place.StartLinePosition.Line + 1})");
    }

    // A cell starts with a #line that gives it its name; a loaded file goes by its own.
    private static bool IsInCell(CompilerMessage error) => error.Location.GetMappedLineSpan().HasMappedPath;

    private static Diagnostic ToKernel(CompilerMessage error)
    {
        var place = error.Location.GetMappedLineSpan();
        return new(new(At(place.StartLinePosition), At(place.EndLinePosition)), error.Severity, error.Id, error.GetMessage(CultureInfo.InvariantCulture));
    }

    private static Microsoft.DotNet.Interactive.LinePosition At(Microsoft.CodeAnalysis.Text.LinePosition place) => new(place.Line, place.Character);
}
