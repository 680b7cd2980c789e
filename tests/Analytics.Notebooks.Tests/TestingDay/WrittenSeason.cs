using System.Globalization;
using System.Text;

namespace Analytics.Notebooks.Tests.TestingDay;

/// <summary>A small season in kilograms with semicolons and decimal commas, written to a temporary folder.</summary>
internal sealed class WrittenSeason : IDisposable
{
    public const int Players = 12;

    public WrittenSeason()
    {
        Folder = Path.Combine(Path.GetTempPath(), "season-" + Guid.NewGuid().ToString("N"));
        Directory.CreateDirectory(Folder);
    }

    public string Folder { get; }

    public static string Id(int player) => string.Create(CultureInfo.InvariantCulture, $"P{player:00}");

    /// <summary>A line a player.</summary>
    public static string Rows(Func<int, FormattableString> row)
        => string.Concat(Enumerable.Range(1, Players).Select(i => FormattableString.Invariant(row(i)) + "\n"));

    /// <summary>Twelve players in two groups, a retest pair, and settings; names may be replaced.</summary>
    public WrittenSeason Squad(string club = "Ashby Moor Rams", Func<int, string>? name = null, string retests = "[[\"2026-01-12\",\"2026-01-15\"]]")
    {
        Write("season.json", $$"""
            {"club":{{System.Text.Json.JsonSerializer.Serialize(club)}},"season":"2026","from":"2026-01-01","to":"2026-06-30",
             "units":{"mass":"kg","jump":"cm","speed":"m/s"},"defaults":{"timing":"electronic","start":"standing_beam","jump_method":"mat"},
             "retests":{{retests}}}
            """);
        var text = new StringBuilder("athlete_id;name;position;group;stature_cm\n");
        for (var i = 1; i <= Players; i++)
        {
            var shown = name?.Invoke(i) ?? $"Player {Id(i)}";
            text.Append(CultureInfo.InvariantCulture, $"{Id(i)};\"{shown.Replace("\"", "\"\"", StringComparison.Ordinal)}\";{(i <= 6 ? "PR" : "FL")};{(i <= 6 ? "Front row" : "Back row")};{180 + i}\n");
        }

        return Write("athletes.csv", text.ToString());
    }

    /// <summary>A day of squat singles, jumps and 10 m sprints: base values by player plus a small wobble that differs by day.</summary>
    public WrittenSeason Day(string date, double squatGain = 0, double jumpGain = 0, int wobble = 0)
    {
        var lifts = new StringBuilder("athlete_id;lift;set;load_kg;reps\n");
        var jumps = new StringBuilder("athlete_id;jump;method;attempt;height_cm\n");
        var sprints = new StringBuilder("athlete_id;attempt;timing;start;t_5m_s;t_10m_s;t_20m_s\n");
        for (var i = 1; i <= Players; i++)
        {
            // Small known wobbles, different each day, that average zero over the squad.
            var sway = ((i * 5 + wobble * 7) % 11 - 5) / 5.0;
            lifts.Append(CultureInfo.InvariantCulture, $"{Id(i)};back_squat;1;{Comma(150 + 4 * i + 2.5 * Math.Round(sway) + squatGain)};1\n");
            jumps.Append(CultureInfo.InvariantCulture, $"{Id(i)};countermovement;mat;1;{Comma(38 + i + sway + jumpGain)}\n");
            sprints.Append(CultureInfo.InvariantCulture, $"{Id(i)};1;electronic;standing_beam;{Comma(1.05 + 0.008 * i)};{Comma(1.80 + 0.01 * i + 0.01 * sway)};{Comma(3.10 + 0.015 * i)}\n");
        }

        return Write($"testing/{date}/lifts.csv", lifts.ToString()).Write($"testing/{date}/jumps.csv", jumps.ToString()).Write($"testing/{date}/sprints.csv", sprints.ToString());
    }

    public WrittenSeason Write(string path, string text)
    {
        var full = Path.Combine(Folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
        return this;
    }

    public WrittenSeason Append(string path, string text)
    {
        File.AppendAllText(Path.Combine(Folder, path), text);
        return this;
    }

    /// <summary>Keeps the rows that fit, and the heads, in all tables under a folder.</summary>
    public WrittenSeason Keep(string under, Func<string, bool> row)
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Folder, under), "*.csv", SearchOption.AllDirectories))
            File.WriteAllLines(file, File.ReadAllLines(file).Where((line, i) => i == 0 || row(line)));
        return this;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private static string Comma(double value) => value.ToString("0.00", CultureInfo.InvariantCulture).Replace('.', ',');
}
