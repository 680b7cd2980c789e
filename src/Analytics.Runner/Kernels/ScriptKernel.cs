using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Scripting;
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
    private ScriptState<object>? state;

    public ScriptKernel() : base("csharp") => KernelInfo.LanguageName = "C#";

    /// <inheritdoc/>
    public async Task HandleAsync(SubmitCode command, KernelInvocationContext context)
    {
        ArgumentNullException.ThrowIfNull(command);
        ArgumentNullException.ThrowIfNull(context);
        var options = setup.For(Environment.CurrentDirectory);
        var script = state is null
            ? CSharpScript.Create<object>(command.Code, options)
            : state.Script.ContinueWith<object>(command.Code, options);
        var errors = script.Compile(context.CancellationToken).Where(d => d.Severity == DiagnosticSeverity.Error).ToList();
        if (errors.Count > 0)
        {
            var failure = new CellCompileException(errors);
            context.Publish(new DiagnosticsProduced([.. failure.Errors], [], command));
            context.Fail(command, failure, failure.Message);
            return;
        }

        // Also after an exception there is a state: what the cell had set before stays set.
        state = state is null
            ? await script.RunAsync(globals: null, static _ => true, context.CancellationToken).ConfigureAwait(false)
            : await script.RunFromAsync(state, static _ => true, context.CancellationToken).ConfigureAwait(false);
        if (state.Exception is { } exception)
            context.Fail(command, exception);
        else if (state.ReturnValue is { } value)
            context.Publish(new ReturnValueProduced(value, command, FormattedValue.CreateManyFromObject(value)));
        else if (TrailingExpression.GivesAValue(script.GetCompilation()))
            context.Publish(new ReturnValueProduced(null, command, FormattedValue.CreateManyFromObject(null)));
    }
}
