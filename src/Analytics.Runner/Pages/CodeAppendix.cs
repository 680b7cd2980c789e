using System.Globalization;
using System.Text;

namespace Analytics.Runner.Pages;

/// <summary>The code of every cell, folded away under "How this was computed".</summary>
internal static class CodeAppendix
{
    public static string Make(PageModel model)
    {
        var code = model.Cells.Where(c => c.IsCode && c.Source.Trim().Length > 0).ToList();
        if (code.Count == 0)
            return "";
        var text = new StringBuilder($"<details class=\"how\"{(model.FailedCell is null ? "" : " open")}>\n<summary><h2>How this was computed</h2></summary>\n");
        text.Append($"<p>The code of {Html.Text(model.Notebook)}, cell by cell.</p>\n");
        foreach (var cell in code)
            text.Append(Entry(cell));
        return text.Append("</details>\n").ToString();
    }

    private static string Entry(PageCell cell)
    {
        // The name of a file stays as it is.
        var heading = cell.IsOfOtherFile ? cell.Label : char.ToUpperInvariant(cell.Label[0]) + cell.Label[1..];
        return $"""
            <section id="code-{cell.Anchor}" aria-labelledby="head-{cell.Anchor}">
            <h3 id="head-{cell.Anchor}">{Html.Text(heading)}{(cell.WasRun ? "" : " (not run)")}</h3>
            <pre><code>{Html.Text(cell.Source.TrimEnd())}</code></pre>
            {Stop(cell)}</section>

            """;
    }

    private static string Stop(PageCell cell)
    {
        if (cell.Failure is not { } failure)
            return "";
        var line = failure.Line is { } number ? string.Create(CultureInfo.InvariantCulture, $" at line {number}") : "";
        var trace = failure.Trace.Count > 1 ? "\n" + string.Join("\n", failure.Trace) : "";
        return $"<p class=\"here\">Stopped{line}: {Html.Text(failure.Kind)}</p>\n<pre class=\"warning\">{Html.Text(failure.Message + trace)}</pre>\n";
    }
}
