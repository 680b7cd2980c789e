using Analytics.Runner.Outputs;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Runner.Kernels;

/// <summary>Turns the events of one submission into outputs and, at its end, into a failure.</summary>
internal sealed class EventOutputs : IDisposable
{
    private readonly Lock gate = new();
    private readonly KernelCommand command;
    private readonly OutputList outputs;
    private readonly IDisposable events;
    private readonly Stack<string> displayKeys = [];
    private readonly Dictionary<string, string> keyOfUpdates = new(StringComparer.Ordinal);

    public EventOutputs(Kernel kernel, KernelCommand command, OutputList outputs)
    {
        this.command = command;
        this.outputs = outputs;
        events = kernel.KernelEvents.Subscribe(new Observer(this));
    }

    public CellFailure? Failure { get; private set; }

    public void Dispose() => events.Dispose();

    private void Take(KernelEvent e)
    {
        switch (e)
        {
            case StandardOutputValueProduced text:
                outputs.Write(isError: false, PlainText(text));
                break;
            case StandardErrorValueProduced text:
                outputs.Write(isError: true, PlainText(text));
                break;
            case DisplayedValueUpdated update:
                Update(update);
                break;
            case DisplayEvent display:
                outputs.Add(ToOutput(display, display is ReturnValueProduced), display.ValueId);
                if (display is DisplayedValueProduced)
                    displayKeys.Push(display.ValueId);
                break;
            case CommandFailed failed when failed.Command == command:
                Failure = CellFailures.From(failed);
                break;
        }
    }

    // This version of the kernel gives the updates of a value another id than its first showing, the same one
    // for all its updates. The value shown last and not yet updated is then the one that is meant.
    private void Update(DisplayedValueUpdated update)
    {
        var output = ToOutput(update, isResult: false);
        if (outputs.Replace(update.ValueId, output))
            return;
        if (!keyOfUpdates.TryGetValue(update.ValueId, out var key) && displayKeys.TryPop(out key))
            keyOfUpdates.Add(update.ValueId, key);
        if (key is null || !outputs.Replace(key, output))
            outputs.Add(output, update.ValueId);
    }

    private static string PlainText(DisplayEvent e)
        => e.FormattedValues.FirstOrDefault(f => f.MimeType == PlainTextFormatter.MimeType)?.Value ?? "";

    private static DisplayOutput ToOutput(DisplayEvent e, bool isResult)
    {
        var forms = e.FormattedValues.Select(f => new OutputForm(f.MimeType, f.Value)).DistinctBy(f => f.MediaType).ToList();
        // Readers without HTML (a terminal, a diff) get text as well.
        if (forms is [{ MediaType: HtmlFormatter.MimeType }] && e.Value is { } value and not Microsoft.AspNetCore.Html.IHtmlContent)
            forms.Add(new OutputForm(PlainTextFormatter.MimeType, value.ToDisplayString(PlainTextFormatter.MimeType)));
        return new DisplayOutput(forms, isResult);
    }

    private sealed class Observer(EventOutputs owner) : IObserver<KernelEvent>
    {
        // A cell may show values from several threads.
        public void OnNext(KernelEvent value)
        {
            lock (owner.gate)
                owner.Take(value);
        }

        public void OnError(Exception error)
        {
        }

        public void OnCompleted()
        {
        }
    }
}
