using Spectre.Console;

namespace Analytics.Cli.Progress;

/// <summary>One bar on a terminal that is gone when it is done with.</summary>
internal sealed class LiveBar : IDisposable
{
    private readonly TaskCompletionSource end = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource<ProgressTask> started = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly Task drawing;

    public LiveBar(TextWriter writer, string text)
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
                started.SetResult(context.AddTask(Markup.Escape(text)));
                await end.Task.ConfigureAwait(false);
            });
    }

    private ProgressTask Bar => started.Task.GetAwaiter().GetResult();

    /// <summary>Shows how many of how many are done, and a text beside.</summary>
    public void Show(int done, int count, string text)
    {
        Bar.MaxValue = count;
        Bar.Value = done;
        Bar.Description = Markup.Escape(text);
    }

    /// <summary>Fills the bar.</summary>
    public void Fill(string text) => Show((int)Bar.MaxValue, (int)Bar.MaxValue, text);

    public void Dispose()
    {
        end.TrySetResult();
        drawing.GetAwaiter().GetResult();
    }
}
