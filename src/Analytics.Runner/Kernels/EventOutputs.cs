using System.Runtime.CompilerServices;
using Analytics.Runner.Outputs;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Runner.Kernels;

/// <summary>Turns the events of one submission into outputs and, at its end, into a failure.</summary>
internal sealed class EventOutputs : IDisposable
{
    private readonly KernelCommand command;
    private readonly OutputList outputs;
    private readonly IDisposable events;
    private readonly IDisposable shown;
    private readonly ConditionalWeakTable<object, string> updateKeys = [];
    private readonly List<(object Forms, string Key)> displays = [];
    private Diagnostic? firstError;

    public EventOutputs(Kernel kernel, KernelCommand command, OutputList outputs)
    {
        this.command = command;
        this.outputs = outputs;
        // The kernel gives the event of a first showing and those of its updates different ids; the list of
        // formatted values is what the two have in common.
        shown = Formatter.SubscribeToDisplayedValues(value =>
        {
            if (!value.IsUpdated)
                updateKeys.AddOrUpdate(value.FormattedValues, value.DisplayId);
        });
        events = kernel.KernelEvents.Subscribe(new Observer(this));
    }

    public CellFailure? Failure { get; private set; }

    public void Dispose()
    {
        events.Dispose();
        shown.Dispose();
    }

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
                displays.Add((display.FormattedValues, display.ValueId ?? ""));
                outputs.Add(ToOutput(display, display is ReturnValueProduced), display.ValueId);
                break;
            case DiagnosticsProduced diagnostics:
                firstError ??= diagnostics.Diagnostics.FirstOrDefault(d => d.Severity == Microsoft.CodeAnalysis.DiagnosticSeverity.Error);
                break;
            case CommandFailed failed when failed.Command == command:
                Failure = CellFailures.From(failed, firstError);
                break;
        }
    }

    private void Update(DisplayedValueUpdated update)
    {
        var output = ToOutput(update, isResult: false);
        if (outputs.Replace(update.ValueId, output))
            return;
        var key = displays.Find(d => updateKeys.TryGetValue(d.Forms, out var id) && id == update.ValueId).Key;
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
        public void OnNext(KernelEvent value) => owner.Take(value);

        public void OnError(Exception error)
        {
        }

        public void OnCompleted()
        {
        }
    }
}
