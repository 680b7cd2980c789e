using System.Diagnostics;
using System.Text.RegularExpressions;
using Analytics.Acceptance.Programs;
using Analytics.Season;

namespace Analytics.Acceptance.Batches;

/// <summary>The real program killed at random moments of a batch: no half file, and the same command goes on to the same folder.</summary>
public sealed class KilledBatchTests : IDisposable
{
    private const int Kills = 20;
    private const int Athletes = 12;

    // Where the pages carry a chart, and so the chart library, writing them takes long enough to be hit.
    private const string Cells = """
        {"cell_type":"code","id":"c1","metadata":{"tags":["parameters"]},"execution_count":null,"outputs":[],"source":"string season = \"season\"; string athlete = \"\";"},
        {"cell_type":"code","id":"c2","metadata":{},"execution_count":null,"outputs":[],"source":"System.Threading.Thread.Sleep(30);\nHTML($\"<div class=\\\"fig-data\\\">{athlete}</div>\")"}
        """;

    private readonly string place = Directory.CreateTempSubdirectory("killed-batch-").FullName;

    public KilledBatchTests()
    {
        File.WriteAllText(In("page.ipynb"), $$"""{"cells":[{{Cells}}],"metadata":{},"nbformat":4,"nbformat_minor":5}""");
        NewSeason.Write(In("season"));
        for (var i = 4; i <= Athletes; i++)
        {
            File.AppendAllText(In("season/athletes.csv"), $"P{i:000},Example {i},LB,Linebackers,73,2002,3\n");
            File.AppendAllText(In("season/testing/2026-01-22/body.csv"), $"P{i:000},{220 + i}\n");
        }
    }

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public async Task Run_KilledAtRandomMoments_LeavesNoHalfFileAndGoesOnToTheSameFolder()
    {
        Assert.True(await EndsAsync("whole", null));
        var wanted = Contents("whole");
        Assert.Equal((2 * Athletes) + 1, wanted.Count);

        var random = new Random(20);
        int kills = 0, folder = 0;
        var midway = new HashSet<int>();
        // A kill that comes after the end is none; it only completes a folder.
        for (var start = 0; start < 4 * Kills && kills < Kills; start++)
        {
            var ended = await EndsAsync($"out{folder}", (random.Next(1, 8), TimeSpan.FromMilliseconds(random.Next(100))));
            CheckWhatIsThere($"out{folder}", wanted);
            if (ended)
            {
                Assert.Equal(wanted, Contents($"out{folder++}"));
                continue;
            }

            kills++;
            midway.Add(Directory.GetFiles(In($"out{folder}"), "*.html").Length);
        }

        Assert.Equal(Kills, kills);
        Assert.True(midway.Count(n => n is > 0 and < Athletes) >= 3, $"The kills met the batch at {string.Join(", ", midway.Order())} pages only.");
        Assert.True(await EndsAsync($"out{folder}", null));
        Assert.Equal(wanted, Contents($"out{folder}"));
    }

    /// <summary>Runs the batch; says whether it came to its end. Killed a moment after it has begun with so many pages, however fast the machine is.</summary>
    private async Task<bool> EndsAsync(string folder, (int Pages, TimeSpan Moment)? kill)
    {
        var start = new ProcessStartInfo("dotnet", [Repository.Program, "run", In("page.ipynb"), "--each", "athlete", "--out", In(folder)]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var heard = new List<string>();
        while ((kill is null || heard.Count(h => h.Contains(" of ", StringComparison.Ordinal)) < kill.Value.Pages) && await process.StandardError.ReadLineAsync() is { } line)
            heard.Add(line);
        var rest = process.StandardError.ReadToEndAsync();
        var end = process.WaitForExitAsync();
        if (kill is { Moment: var moment } && await Task.WhenAny(end, Task.Delay(moment)) != end)
            process.Kill();
        await end;
        // Dead by signal 9, or at its end.
        if (process.ExitCode == 137)
            return false;
        Assert.True(process.ExitCode == 0, $"Exit code {process.ExitCode}.\n{string.Join('\n', heard)}\n{await rest}{await output}");
        return true;
    }

    // Whatever stands under a final name is whole: it is what an uninterrupted batch has there.
    private void CheckWhatIsThere(string folder, SortedDictionary<string, string> wanted)
    {
        foreach (var (name, text) in Contents(folder).Where(c => !c.Key.StartsWith('.')))
        {
            if (name == "page-batch.json")
                Assert.All(Entries(text), e => Assert.Contains(e, Entries(wanted[name])));
            else
                Assert.Equal(wanted[name], text);
        }
    }

    private static List<string> Entries(string journal)
    {
        using var json = System.Text.Json.JsonDocument.Parse(journal);
        return [.. json.RootElement.GetProperty("pages").EnumerateArray().Select(e => e.GetRawText())];
    }

    private SortedDictionary<string, string> Contents(string folder)
        => new(Directory.GetFileSystemEntries(In(folder)).ToDictionary(f => Path.GetFileName(f), f => Steady(File.ReadAllText(f))), StringComparer.Ordinal);

    private static string Steady(string text)
        => Regex.Replace(Regex.Replace(text, "<!--varies-->.*?<!--/varies-->", "", RegexOptions.Singleline), "\"varies\": \\{.*?\\}", "", RegexOptions.Singleline);

    private string In(string name) => Path.Combine(place, name);
}
