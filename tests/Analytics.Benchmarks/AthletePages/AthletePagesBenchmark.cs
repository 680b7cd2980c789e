using System.Globalization;
using Analytics.Season;

namespace Analytics.Benchmarks.AthletePages;

/// <summary>Pages of a notebook about one athlete: as many separate runs of the built program against one batch, in turn.</summary>
internal sealed class AthletePagesBenchmark : IBenchmark
{
    private const int Most = 60;

    public string Name => "athlete-pages";

    public string What => "a page per athlete: separate runs against one batch [PAGES] [NOTEBOOK]";

    public int Run(string[] args)
    {
        var wanted = args.Length > 0 && int.TryParse(args[0], CultureInfo.InvariantCulture, out var given) && given > 0 ? given : Most;
        var root = Root();
        var notebook = args.Length > 1 ? args[1] : Path.Combine(root, "notebooks", "athlete-page.ipynb");
        var program = Path.Combine(root, "src", "Analytics.Cli", "bin", "Release", "net10.0", "analytics.dll");
        if (!File.Exists(program) || !File.Exists(notebook))
        {
            Console.Error.WriteLine($"Not there: {(File.Exists(program) ? notebook : program + ". Build it: dotnet build -c Release src/Analytics.Cli")}");
            return 2;
        }

        var season = SeasonReader.Read(Path.Combine(root, "data-demo"));
        var tested = season.Days.SelectMany(d => d.Athletes).Where(a => a.Trials.Count > 0).Select(a => a.AthleteId).ToHashSet(StringComparer.Ordinal);
        List<string> athletes = [.. season.Athletes.Select(a => a.Id).Where(tested.Contains).Take(wanted)];
        var place = Directory.CreateTempSubdirectory("athlete-pages-").FullName;
        try
        {
            return Measure(program, notebook, athletes, place);
        }
        finally
        {
            Directory.Delete(place, recursive: true);
        }
    }

    private static int Measure(string program, string notebook, List<string> athletes, string place)
    {
        ProgramRun? Alone(string athlete) => ProgramRun.Of(program, ["run", notebook, "--set", $"athlete={athlete}", "--out", Path.Combine(place, athlete)]);
        ProgramRun? Batch(IReadOnlyList<string> some, string folder) => ProgramRun.Of(program, ["run", notebook, "--each", "athlete=" + string.Join(',', some), "--out", Path.Combine(place, folder)]);

        // The first run warms the disk and is not counted.
        if (Alone(athletes[0]) is null)
            return 2;
        var few = athletes.Take(Math.Max(1, athletes.Count / 4)).ToList();
        var alone = new List<ProgramRun>();
        var first = Batch(athletes, "all");
        foreach (var athlete in athletes)
        {
            if (Alone(athlete) is not { } run)
                return 2;
            alone.Add(run);
        }

        if (first is null || Batch(few, "few") is not { } quarter || Batch(athletes, "again") is not { } second || Batch(athletes, "again") is not { } resumed)
            return 2;
        var sum = alone.Sum(r => r.Seconds);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{athletes.Count} separate runs   {sum,7:0.00} s, {sum / athletes.Count:0.00} s a page, processor {alone.Sum(r => r.Processor):0.00} s, largest working set {alone.Max(r => r.PeakMegabytes):0} MB"));
        foreach (var (name, run) in (ReadOnlySpan<(string, ProgramRun)>)[("one batch, before them", first), ("one batch, after them", second)])
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-23} {run.Seconds,7:0.00} s, {run.Seconds / athletes.Count:0.000} s a page, processor {run.Processor:0.00} s, largest working set {run.PeakMegabytes:0} MB, {sum / run.Seconds:0.0} times as fast"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"a batch of " + few.Count,-23} {quarter.Seconds,7:0.00} s, largest working set {quarter.PeakMegabytes:0} MB"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"all already there",-23} {resumed.Seconds,7:0.00} s"));
        return 0;
    }

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Analytics.sln"))) return folder.FullName;
        throw new InvalidOperationException("The benchmark has to run inside the working copy.");
    }
}
