using System.Text.Json.Nodes;
using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Reports;

/// <summary>The demo season with names that would run if they were ever taken for markup.</summary>
internal static class HostileSeason
{
    public const string Athlete = "<img src=x onerror=alert(1)>";
    public const string Club = "\"><script>alert(1)</script>";
    public const string Group = "</script><b onclick=alert(1)>%{x}";

    public static string Make()
    {
        var folder = Path.Combine(Directory.CreateTempSubdirectory("analytics-season-").FullName, "hostile");
        foreach (var file in Directory.EnumerateFiles(Repository.DemoSeason, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(folder, Path.GetRelativePath(Repository.DemoSeason, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        Rename(Path.Combine(folder, "athletes.csv"));
        var calendar = Path.Combine(folder, "training", "calendar.csv");
        File.WriteAllText(calendar, File.ReadAllText(calendar).Replace("Offensive line", Group, StringComparison.Ordinal));
        var settings = JsonNode.Parse(File.ReadAllText(Path.Combine(folder, "season.json")))!;
        settings["club"] = Club;
        File.WriteAllText(Path.Combine(folder, "season.json"), settings.ToJsonString());
        return folder;
    }

    // Every athlete of a group, so that the name is on every chart and in every table.
    private static void Rename(string athletes)
    {
        var lines = File.ReadAllLines(athletes);
        var columns = lines[0].Split(',').ToList();
        int name = columns.IndexOf("name"), group = columns.IndexOf("group");
        for (var i = 1; i < lines.Length; i++)
        {
            var cells = lines[i].Split(',');
            cells[name] = $"{Athlete} {cells[0]}";
            if (cells[group] == "Offensive line")
                cells[group] = Group;
            lines[i] = string.Join(',', cells);
        }

        File.WriteAllLines(athletes, lines);
    }
}
