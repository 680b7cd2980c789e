using System.Text.Json.Nodes;

namespace Analytics.Acceptance.Reports;

/// <summary>Small notebooks for situations the real ones are never in.</summary>
internal static class OwnNotebooks
{
    private const string Figure = """"
        HTML("""<figure class="fig" aria-labelledby="one"><figcaption id="one">Three points</figcaption><div class="fig-static"><svg viewBox="0 0 300 80" width="300" height="80" role="img" aria-label="Three rising points"><circle cx="40" cy="60" r="4"/><circle cx="150" cy="40" r="4"/><circle cx="260" cy="20" r="4"/></svg></div><div class="fig-live" hidden></div><script type="application/json" class="fig-data">{"data":[{"type":"scatter","mode":"markers","x":[1,2,3],"y":[4,5,6]}],"layout":{"height":240},"config":{}}</script><details class="fig-table"><summary>Numbers as a table</summary><table><caption>Points</caption><thead><tr><th scope="col">x</th><th scope="col">y</th></tr></thead><tbody><tr><td>1</td><td>4</td></tr></tbody></table></details></figure>""")
        """";

    public static string Failing() => Write("failing",
        Markdown("# A day that stops"),
        Code("Console.WriteLine(\"made before\");"),
        Code("int[] one = { 1 };\n\none[5] = 2;"),
        Code("Console.WriteLine(\"never made\");"));

    public static string WithScripts() => Write("scripted",
        Markdown("# Scripts\n\n<img src=x onerror=\"window.ran='markdown'\"> [link](javascript:window.ran='link')"),
        Code("HTML(\"<script>window.ran='script'</script><img src='x' alt='' onerror=\\\"window.ran='handler'\\\"><svg role='img' aria-label='s' onload=\\\"window.ran='svg'\\\"></svg>\")"),
        Code("HTML(\"<img alt='' src='http://127.0.0.1:9/a.png'><link rel='stylesheet' href='http://127.0.0.1:9/a.css'><iframe src='http://127.0.0.1:9/'></iframe><meta http-equiv='refresh' content='0;url=http://127.0.0.1:9/'><style>@import 'http://127.0.0.1:9/b.css'; .x{background:url(http://127.0.0.1:9/c.png)}</style><p class='x'>reaching out</p>\")"),
        Code(Figure));

    /// <summary>A notebook that draws a chart with the chart library itself, as someone at work on a new idea would.</summary>
    public static string WithPlainChart(string libraryFolder) => Write("plain-chart",
        Markdown("# One chart"),
        Code($$"""
            #r "{{libraryFolder.Replace('\\', '/')}}/Analytics.Notebooks.dll"
            #r "{{libraryFolder.Replace('\\', '/')}}/Plotly.NET.dll"
            #r "{{libraryFolder.Replace('\\', '/')}}/Plotly.NET.CSharp.dll"
            Analytics.Notebooks.Kit.Start();
            """),
        Code("""
            var chart = Plotly.NET.CSharp.Chart.Line<double, double, string>(new[] { 1.0, 2.0 }, new[] { 3.0, 5.0 });
            Console.WriteLine(Plotly.NET.GenericChart.toFigureJson(chart).Contains("scatter"));
            """));

    private static string Write(string name, params JsonObject[] cells)
    {
        for (var i = 0; i < cells.Length; i++)
            cells[i]["id"] = $"c{i}";
        var path = Path.Combine(Directory.CreateTempSubdirectory("analytics-notebook-").FullName, name + ".ipynb");
        File.WriteAllText(path, new JsonObject
        {
            ["cells"] = new JsonArray([.. cells]),
            ["metadata"] = new JsonObject { ["kernelspec"] = new JsonObject { ["display_name"] = ".NET (C#)", ["language"] = "C#", ["name"] = ".net-csharp" } },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        }.ToJsonString());
        return path;
    }

    private static JsonObject Markdown(string source) => new() { ["cell_type"] = "markdown", ["metadata"] = new JsonObject(), ["source"] = source };

    private static JsonObject Code(string source) => new()
    {
        ["cell_type"] = "code",
        ["execution_count"] = null,
        ["metadata"] = new JsonObject(),
        ["outputs"] = new JsonArray(),
        ["source"] = source,
    };
}
