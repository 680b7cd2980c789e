using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;

namespace Analytics.Runner.Kernels;

/// <summary>
/// Cells compiled while earlier ones still run. Compiling looks at the code of the cells before, never at their
/// values, so it need not wait for them.
/// </summary>
internal sealed class CompiledAhead : IDisposable
{
    private readonly Queue<(string Code, Task<Script<object>?> Script)> coming = new();
    private volatile bool stopped;

    /// <summary>Starts to compile.</summary>
    /// <param name="previous">The cell before the first of them; null when there is none.</param>
    /// <param name="cells">Their code, in order.</param>
    /// <param name="options">What they are compiled with.</param>
    public void Start(Script<object>? previous, IEnumerable<string> cells, ScriptOptions options)
    {
        var last = Task.FromResult(previous);
        foreach (var code in cells)
        {
            var before = last;
            var isFirst = coming.Count == 0 && previous is null;
            // Each waits for the one before without holding a thread; after one that does not compile none is tried.
            last = Task.Run(async () =>
            {
                var script = await before.ConfigureAwait(false);
                return script is null && !isFirst ? null : Compile(script, code, options);
            });
            coming.Enqueue((code, last));
        }
    }

    /// <summary>
    /// The next cell as compiled; null when it is another than was said, does not compile, or does not follow the
    /// cell that ran last. All others are then forgotten too.
    /// </summary>
    public async Task<Script<object>?> TakeAsync(Script<object>? previous, string code)
    {
        if (coming.TryDequeue(out var next) && next.Code == code
            && await next.Script.ConfigureAwait(false) is { } script && script.Previous == previous)
            return script;
        coming.Clear();
        return null;
    }

    /// <summary>Forgets the cells that were not taken.</summary>
    public void Forget() => coming.Clear();

    /// <summary>The script of a cell that follows another.</summary>
    public static Script<object> Following(Script<object>? previous, string code, ScriptOptions options)
        => previous is null ? CSharpScript.Create<object>(code, options) : previous.ContinueWith<object>(code, options);

    /// <inheritdoc/>
    public void Dispose() => stopped = true;

    private Script<object>? Compile(Script<object>? previous, string code, ScriptOptions options)
    {
        if (stopped)
            return null;
        var script = Following(previous, code, options);
        // When its turn comes the cell is compiled again and its errors are told.
        return script.Compile().Any(d => d.Severity == DiagnosticSeverity.Error) ? null : script;
    }
}
