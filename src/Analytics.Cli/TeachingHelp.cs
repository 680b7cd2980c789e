using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Analytics.Cli;

/// <summary>The help text followed by examples and exit codes.</summary>
internal sealed class TeachingHelp(HelpAction usual) : SynchronousCommandLineAction
{
    private const string Examples = """
        Examples:
          analytics run notebooks/testing-day.ipynb
              the demo season, its latest testing day, into out/
          analytics run notebooks/testing-day.ipynb --season my-season --day 2026-06-08 --open
              your own season, one testing day, opened in the browser
          analytics run notebooks/testing-day.ipynb --set since=first
              any other setting of the notebook, here: compare with the first day; a wrong name lists the right ones
          analytics run notebooks/season-report.ipynb --season my-season --share codes
              a report that names players by codes; initials and names are the other words
          analytics run notebooks/testing-day.ipynb --season my-season --with notebooks/metric-bench.ipynb
              the same report with your own metrics on trial, marked as such; a .csx file of C# will do as well
          analytics verify out/testing-day.html --season my-season
              whether that report's numbers still follow from the data
          analytics run notebooks/athlete-page.ipynb --season my-season --each athlete --out pages
              a page for each athlete with results; the same command again makes what is missing or out of date
          analytics new-season my-season
              an empty season folder with example rows to replace
          analytics check my-season
              what would be used, and what is held back and why
          analytics codes my-season
              who is who in reports with codes: a private list, never to be sent
          analytics promote ideas.csx --name long_jump_for_size
              a sketch of a metric becomes code, tests and documents of this program's repository

        Exit codes:
          0    fine
          1    the command line asks for something that cannot be meant
          2    data was held back or cannot be used, a cell failed (what was made is still written), verify found a difference, or a promoted metric does not build or fails its tests
          3    the run took longer than --timeout (what was made is still written)
          130  interrupted; nothing of the report it was at was written

        """;

    public override int Invoke(ParseResult parseResult)
    {
        var code = usual.Invoke(parseResult);
        parseResult.InvocationConfiguration.Output.WriteLine(Examples.ReplaceLineEndings());
        return code;
    }
}
