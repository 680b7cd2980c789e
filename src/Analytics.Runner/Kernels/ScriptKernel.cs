using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Runner.Kernels;

/// <summary>
/// C# cells by Roslyn scripting, with the events and the formatters of the stock kernel. The stock one also builds an
/// editor's workspace for completions and hover texts, which costs a batch run most of a second and gives it nothing.
/// </summary>
internal sealed class ScriptKernel : Kernel, IKernelCommandHandler<SubmitCode>
{
    private readonly ScriptSetup setup = new();
    private readonly CompiledAhead ahead = new();
    private readonly List<(string Code, Script<object> Script)> compiled = [];
    private int next;
    private ScriptState<object>? state;

    public ScriptKernel() : base("csharp")
    {
        KernelInfo.LanguageName = "C#";
        RegisterForDisposal(ahead);
    }

    private Script<object>? Last => (Script<object>?)state?.Script;

    /// <summary>Says which cells come next. Only to be called between two submissions.</summary>
    /// <param name="cells">Their code, in order.</param>
    public void Expect(IReadOnlyList<string> cells)
    {
        var known = compiled.Skip(next).Zip(cells, (c, code) => c.Code == code).TakeWhile(same => same).Count();
        ahead.Start(known == 0 ? Last : compiled[next + known - 1].Script, cells.Skip(known), setup.For(Environment.CurrentDirectory));
    }

    /// <summary>Forgets all variables. Only to be called between two submissions.</summary>
    /// <param name="keepCompiled">Whether cells stay compiled for when they come again in the same order.</param>
    public void Rewind(bool keepCompiled)
    {
        state = null;
        next = 0;
        ahead.Forget();
        if (!keepCompiled)
            compiled.Clear();
    }

    /// <summary>Gives a variable another value; of several with that name the one declared last.</summary>
    public void Set(string name, string value)
        => (state?.GetVariable(name) ?? throw new InvalidOperationException($"No cell has declared '{name}'.")).Value = value;

    /// <inheritdoc/>
    public async Task HandleAsync(SubmitCode command, KernelInvocationContext context)
    {
        ArgumentNullException.ThrowIfNull(command);
        ArgumentNullException.ThrowIfNull(context);
        var isKnown = next < compiled.Count && compiled[next].Code == command.Code;
        var script = isKnown ? compiled[next].Script
            : await ahead.TakeAsync(Last, command.Code).ConfigureAwait(false) ?? CompiledAhead.Following(Last, command.Code, setup.For(Environment.CurrentDirectory));
        var errors = isKnown ? [] : script.Compile(context.CancellationToken).Where(d => d.Severity == DiagnosticSeverity.Error).ToList();
        if (errors.Count > 0)
        {
            var failure = new CellCompileException(errors);
            context.Publish(new DiagnosticsProduced(failure.Errors, [], command));
            context.Fail(command, failure, failure.Message);
            return;
        }

        if (!isKnown)
        {
            compiled.RemoveRange(next, compiled.Count - next);
            compiled.Add((command.Code, script));
        }

        next++;
        // Also after an exception there is a state: what the cell had set before stays set.
        state = state is null
            ? await script.RunAsync(globals: null, static _ => true, context.CancellationToken).ConfigureAwait(false)
            : await script.RunFromAsync(state, static _ => true, context.CancellationToken).ConfigureAwait(false);
        if (state.Exception is { } exception)
            context.Fail(command, exception);
        else if (state.ReturnValue is not null || TrailingExpression.GivesAValue(script.GetCompilation()))
            context.Publish(new ReturnValueProduced(state.ReturnValue, command, FormattedValue.CreateManyFromObject(state.ReturnValue)));
    }
}
