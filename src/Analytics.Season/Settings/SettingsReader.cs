using System.Text.Json;
using Analytics.Season.Cells;
using Analytics.Season.Files;
using Analytics.Season.Tables;

namespace Analytics.Season.Settings;

/// <summary>Reads season.json; every fault in it is named at once.</summary>
internal static class SettingsReader
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "season.json";

    /// <summary>Reads the settings.</summary>
    /// <param name="file">The file.</param>
    /// <param name="notes">Receives remarks, such as unknown keys.</param>
    /// <exception cref="SeasonException">The settings cannot be used.</exception>
    public static SeasonSettings Read(FileContent file, ICollection<InputNote> notes)
    {
        using var document = Parse(file);
        var root = new SettingsObject("", document.RootElement, [], notes);
        if (document.RootElement.ValueKind != JsonValueKind.Object)
            throw new SeasonException($"{FileName} must hold one object: {{ \"club\": ..., \"season\": ..., \"from\": ..., \"to\": ... }}.");
        var settings = Build(root);
        root.NoteUnread();
        if (root.Faults.Count > 0) throw new SeasonException($"{FileName} cannot be used: {string.Join(" ", root.Faults)}");
        return settings;
    }

    private static SeasonSettings Build(SettingsObject root)
    {
        var from = root.Date("from");
        var to = root.Date("to");
        if (from > to) root.Faults.Add($"'from' ({DateText.Iso(from)}) is after 'to' ({DateText.Iso(to)}); swap them.");
        SettingsObject units = root.Object("units"), defaults = root.Object("defaults"), worthwhile = root.Object("worthwhile");
        var settings = new SeasonSettings
        {
            Club = root.Text("club"),
            Season = root.Text("season"),
            From = from,
            To = to,
            MassUnit = units.Choice("mass", "lb", "lb", "kg"),
            JumpUnit = units.Choice("jump", "in", "in", "cm"),
            SpeedUnit = units.Choice("speed", "mph", "mph", "m/s", "km/h", "yd/s"),
            DefaultTiming = defaults.Word("timing", Words.Timing),
            DefaultStart = defaults.Word("start", Words.Start),
            DefaultJumpMethod = defaults.Word("jump_method", Words.Method),
            Retests = Retests(root),
            WorthwhileShare = worthwhile.Number("share", 0.01, 2) ?? 0.2,
            Worthwhile = worthwhile.OtherNumbers(),
            TestMinutes = root.Object("test_minutes").OtherNumbers(),
            Video = VideoReader.Read(root.Object("video")),
        };
        units.NoteUnread();
        defaults.NoteUnread();
        return settings;
    }

    private static List<RetestPair> Retests(SettingsObject root)
    {
        var pairs = new List<RetestPair>();
        foreach (var element in root.Array("retests"))
        {
            var dates = element.ValueKind is JsonValueKind.Array
                ? element.EnumerateArray().Select(d => d.ValueKind is JsonValueKind.String ? DateText.Read(d.GetString()!) : null).ToList()
                : [];
            if (dates is [{ } first, { } second] && first < second) pairs.Add(new RetestPair(first, second));
            else root.Faults.Add($"'retests' holds {CellText.Show(element.GetRawText())}; each retest is two testing days, the earlier first: [\"2026-01-19\", \"2026-01-22\"].");
        }

        return pairs;
    }

    private static JsonDocument Parse(FileContent file)
    {
        try
        {
            return JsonDocument.Parse(TextBytes.ToUtf8(file.Bytes, out _), new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
        }
        catch (JsonException error)
        {
            var place = error.LineNumber is { } line ? $" at line {line + 1}" : "";
            var what = error.Message.Split(". Path")[0].Split(" LineNumber")[0].TrimEnd('.');
            throw new SeasonException($"{FileName} is not valid JSON{place}: {what}. Look for a missing comma, quote or bracket there.", error);
        }
        catch (InputFault fault)
        {
            throw new SeasonException($"{FileName} cannot be used: {fault.Reason} {fault.Remedy}", fault);
        }
    }
}
