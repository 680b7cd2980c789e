using Spectre.Console;

namespace Analytics.Cli.Progress;

/// <summary>A bar that fills as cells run, for a terminal.</summary>
internal sealed class ProgressBar : RunProgress
{
    private readonly TaskCompletionSource end = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource<ProgressTask> started = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly Task drawing;

    public ProgressBar(TextWriter writer, string notebook)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(writer),
            Ansi = AnsiSupport.Yes,
            Interactive = InteractionSupport.Yes,
        });
        drawing = console.Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new ElapsedTimeColumn())
            .StartAsync(async context =>
            {
                started.SetResult(context.AddTask(Markup.Escape(notebook)));
                await end.Task.ConfigureAwait(false);
            });
    }

    private ProgressTask Bar => started.Task.GetAwaiter().GetResult();

    public override void CellStarts(string label, int index, int count)
    {
        Bar.MaxValue = count;
        Bar.Value = index - 1;
        Bar.Description = Markup.Escape($"{label} of {count}");
    }

    public override void Writing()
    {
        Bar.Value = Bar.MaxValue;
        Bar.Description = "writing";
    }

    public override void Dispose()
    {
        end.TrySetResult();
        drawing.GetAwaiter().GetResult();
    }
}
