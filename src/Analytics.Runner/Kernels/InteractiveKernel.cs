using Analytics.Runner.Outputs;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Runner.Kernels;

/// <summary>The .NET (C#) kernel in this process: no server, no port.</summary>
/// <remarks>
/// Culture, current folder, console and formatters belong to the process, so one notebook runs at a time.
/// A busy cell cannot be stopped from outside: after a time-out the process has to end.
/// </remarks>
public sealed class InteractiveKernel : IRepeatingKernel
{
    private readonly ScriptKernel csharp = new();
    private readonly CompositeKernel kernel;
    private readonly HostAssemblies hostAssemblies;
    private readonly Action registerFormatters;
    private Task ready = Task.CompletedTask;

    /// <summary>Starts a kernel; the costly part goes on in the background.</summary>
    /// <param name="hostAssemblies">The assemblies this program ships.</param>
    /// <param name="registerFormatters">Tells the kernel how results of the notebook's libraries look.</param>
    public InteractiveKernel(HostAssemblies hostAssemblies, Action registerFormatters)
    {
        ArgumentNullException.ThrowIfNull(registerFormatters);
        this.hostAssemblies = hostAssemblies;
        this.registerFormatters = registerFormatters;
        kernel = new CompositeKernel { csharp };
        kernel.DefaultKernelName = csharp.Name;
        Begin();
    }

    /// <inheritdoc/>
    public void Expect(IReadOnlyList<CellCode> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        // What a cell takes from outside may be made by a cell before it, so from there on each waits its turn.
        ready = ExpectAfter(ready, [.. cells.Select(Labelled).TakeWhile(code => !hostAssemblies.LeadsOutside(code))]);
    }

    /// <inheritdoc/>
    public async Task<CellFailure?> RunAsync(CellCode cell, OutputList outputs)
    {
        ArgumentNullException.ThrowIfNull(cell);
        await ready.ConfigureAwait(false);
        var command = new SubmitCode(Labelled(cell));
        using var watch = new EventOutputs(kernel, command, outputs);
        // A cell without an await runs on the thread that sends it; a watchdog needs its own thread free.
        await Task.Run(() => kernel.SendAsync(command)).ConfigureAwait(false);
        return watch.Failure;
    }

    /// <inheritdoc/>
    public bool CanRepeat(IReadOnlyList<CellCode> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        return !cells.Any(c => hostAssemblies.LeadsOutside(hostAssemblies.Redirect(c.Source)) || StaticState.IsIn(c.Source));
    }

    /// <inheritdoc/>
    public void Rewind(bool keepCompiled)
    {
        csharp.Rewind(keepCompiled);
        Begin();
    }

    /// <inheritdoc/>
    public void Set(string name, string value) => csharp.Set(name, value);

    private void Begin()
    {
        // Formatters are static: what an earlier notebook registered must not show here.
        Formatter.ResetToDefault();
        registerFormatters();
        ready = Task.Run(() => kernel.SendAsync(new SubmitCode("0")));
    }

    private async Task ExpectAfter(Task before, IReadOnlyList<string> cells)
    {
        await before.ConfigureAwait(false);
        csharp.Expect(cells);
    }

    // Traces and messages then count the lines of the cell and call it by its name.
    private string Labelled(CellCode cell) => $"#line 1 \"{cell.Label}\"\n{hostAssemblies.Redirect(cell.Source)}";

    /// <inheritdoc/>
    public void Dispose() => kernel.Dispose();
}
