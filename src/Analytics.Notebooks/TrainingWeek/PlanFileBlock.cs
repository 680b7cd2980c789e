using System.Text;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>
/// The plan as a file: a link in a page, and an output of type <c>text/csv</c> that a runner may write beside the page.
/// </summary>
[TypeFormatterSource(typeof(PlanFileFormatters), PreferredMimeTypes = ["text/html", "text/plain", PlanFileFormatters.Csv])]
internal sealed class PlanFileBlock(string csv, int kept, string fileName) : WeekBlock(new PlanFileLink(csv, kept, fileName))
{
    public string Csv => csv;
}

/// <summary>The forms of the plan as a file.</summary>
internal sealed class PlanFileFormatters
{
    public const string Csv = "text/csv";

    private readonly IReadOnlyList<BlockFormatter> _formatters =
    [
        new("text/html", block => block.ToHtml()),
        new("text/plain", block => block.ToText()),
        new(Csv, block => ((PlanFileBlock)block).Csv),
    ];

    public IEnumerable<object> CreateTypeFormatters() => _formatters;
}

/// <summary>A link that holds the file, so that a page that was sent has it too.</summary>
internal sealed class PlanFileLink(string csv, int kept, string fileName) : ReportBlock
{
    private string Text => FormattableString.Invariant($"The plan as a spreadsheet: {csv.Count(c => c == '\n') - 1} rows{(kept > 0 ? FormattableString.Invariant($", {kept} of them kept from other weeks") : "")}.");

    public override void WriteHtml(Markup html)
        => html.Add($"<p class=\"dl\">{Text} <a download=\"{fileName}\" href=\"data:text/csv;charset=utf-8;base64,").Raw(Convert.ToBase64String(Encoding.UTF8.GetBytes("\uFEFF" + csv)))
            .Add($"\">Save {fileName}</a> <small>Put it into the season as training/plan.csv; write keep or never in its column keep to fix a row, and the next run changes as little as it can.</small></p>");

    public override string ToText() => $"{Text} Put it into the season as training/plan.csv.";
}
