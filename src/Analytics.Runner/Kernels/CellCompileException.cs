using Microsoft.DotNet.Interactive;

namespace Analytics.Runner.Kernels;

/// <summary>The code of a cell does not compile.</summary>
internal sealed class CellCompileException : Exception
{
    public CellCompileException(IEnumerable<Microsoft.CodeAnalysis.Diagnostic> errors)
        : this([.. errors.Select(ToKernel)])
    {
    }

    private CellCompileException(IReadOnlyList<Diagnostic> errors)
        : base(string.Join("\n", errors.Select(e => $"{e.Code}: {e.Message}"))) => Errors = errors;

    /// <summary>The compiler's errors; lines are those of the cell, counted from 0.</summary>
    public IReadOnlyList<Diagnostic> Errors { get; }

    private static Diagnostic ToKernel(Microsoft.CodeAnalysis.Diagnostic error)
    {
        var place = error.Location.GetMappedLineSpan();
        var span = new LinePositionSpan(At(place.StartLinePosition), At(place.EndLinePosition));
        return new Diagnostic(span, error.Severity, error.Id, error.GetMessage(System.Globalization.CultureInfo.InvariantCulture));
    }

    private static LinePosition At(Microsoft.CodeAnalysis.Text.LinePosition place) => new(place.Line, place.Character);
}
