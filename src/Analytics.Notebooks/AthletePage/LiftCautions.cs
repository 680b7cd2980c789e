using Analytics.Notebooks.Blocks;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The cautions that go with loads, short enough to be read.</summary>
internal static class LiftCautions
{
    private const string Title = "Before you lift";

    private static readonly string[] s_lines =
    [
        "Local rules, licensed medical staff and your coach come first. Sore, ill, dizzy, or a knock to the head: do not lift, tell them.",
        "Warm up: five to ten easy repetitions, three to five heavier ones, then steps up to the load.",
        "Bench press: one or two trained spotters. Squat: two or three, with safety bars. Collars on. Never spot a clean; learn the safe miss.",
        "Stop on pain, dizziness, lost technique or two misses. Under 18: only with close, qualified supervision.",
    ];

    public static ReportBlock Of(PlayerPage page)
    {
        _ = page;
        return new Written(
            html =>
            {
                html.Add($"<div class=\"ca\"><h3>{Title}</h3><ul>");
                foreach (var line in s_lines) html.Add($"<li>{line}</li>");
                html.Raw("</ul></div>");
            },
            string.Join('\n', s_lines.Select(l => "- " + l).Prepend(Title)));
    }
}
