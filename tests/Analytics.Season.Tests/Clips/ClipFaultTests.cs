using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Clips;

/// <summary>A good clip, broken in one way at a time: what is said, and what stays.</summary>
public sealed class ClipFaultTests
{
    private const string Table = RunnerClip.Day + "contact.csv";
    private const string Clip = RunnerClip.Day + "clips/a.csv";
    private const string Stamps = RunnerClip.Day + "clips/a.times.csv";

    private static readonly RunnerClip Good = new();

    private sealed record Break(string Points, string Said, bool RowStays = true, string? Row = null, string Video = RunnerClip.Video, string? Times = null);

    private static readonly Dictionary<string, Break> Broken = new(StringComparer.Ordinal)
    {
        ["axes swapped"] = new((Good with { Swapped = true }).Long(), "x and y look swapped"),
        ["y flipped"] = new((Good with { YUp = true }).Long(), "y seems to count the other way"),
        ["30 typed for 240"] = new(Good.Long(), "the rate looks like 240 Hz", RowStays: false, Row: Good.Row(hertz: 30)),
        ["60 typed for 240"] = new(Good.Long(), "the rate looks like", RowStays: false, Row: Good.Row(hertz: 60)),
        ["stick in ft typed as m"] = new(Good.Long(), "It looks like ft", Video: RunnerClip.Video.Replace("2.0", "6.56", StringComparison.Ordinal)),
        ["no calibration"] = new(Good.Long(), "\"calibration\"", Video: """ "video":{"rate_hz":240} """),
        ["no ends"] = new(RunnerClip.Long(Good.Points().Where(p => p.Marker is not ("low" or "high"))), "'low'"),
        ["one end only"] = new(RunnerClip.Long(Good.Points().Where(p => p.Marker is not "high")), "'high'"),
        ["ends at one place"] = new(RunnerClip.Long(Good.Points().Select(p => p.Marker is "high" ? (p.Frame, p.Marker, 200.0, 1000.0) : p.Marker is "low" ? (p.Frame, p.Marker, 201.0, 1001.0) : p)), "px apart"),
        ["no landmark"] = new(RunnerClip.Long(Good.Points().Select(p => p with { Marker = p.Marker is "low" or "high" ? p.Marker : "dot " + p.Marker })), "no marker"),
        ["two markers, one landmark"] = new(RunnerClip.Long(Good.Points().Concat([(5, "Hip ", 400.0, 500.0), (5, "hip", 400.0, 500.0)])), "hip"),
        ["a marker jumps for good"] = new(RunnerClip.Long(Good.Points().Select(p => p is { Marker: "knee", Frame: > 60 } ? p with { X = p.X + 40 } : p)), "and stays there"),
        ["a marker jumps often"] = new(RunnerClip.Long(Good.Points().Select(p => p.Marker is "knee" && p.Frame % 7 == 3 ? p with { X = p.X + 150 } : p)), "more of its"),
        ["other way than typed"] = new(Good.Long(), "left", Row: Good.Row(travel: "left")),
        ["y outside the picture"] = new(RunnerClip.Long(Good.Points().Select(p => p with { Y = p.Y + 700 })), "picture"),
        ["frame with a digit too many"] = new(Good.Long() + "900000,hip,400,500\n", "at most 200000 frames"),
        ["frames outside the stamps"] = new(Good.Long(), "the time stamps cover frames 0 to 20", RowStays: false, Times: Lines(21, 240)),
        ["not a number"] = new(Good.Long().Replace("\n3,hip,", "\n3,hip,x", StringComparison.Ordinal), "not a number"),
        ["infinite"] = new(Good.Long() + "200,hip,1e308,500\n", "1e308"),
        ["empty marker"] = new(Good.Long() + "200,,400,500\n", "marker"),
        ["one coordinate"] = new(Good.Long() + "200,hip,400,\n", "y"),
        ["no such column"] = new("frame,marker,x_px\n1,hip,400\n", "y_px"),
        ["coordinates in m"] = new("frame,marker,x_m,y_m\n1,hip,4,5\n", "px"),
        ["binary"] = new("\0\u0001\u0002PNG\0\0", "a.csv"),
        ["same frame twice"] = new(Good.Long() + "20,hip,400,500\n", "frame 20"),
    };

    public static TheoryData<string> Ways => [.. Broken.Keys];

    [Theory]
    [MemberData(nameof(Ways))]
    public void Read_BrokenClip_SaysSoAndLosesNothing(string way)
    {
        var (points, said, rowStays, row, video, times) = Broken[way];
        using var season = RunnerClip.Season(video).With(Table, row ?? Good.Row()).With(Clip, points);
        if (times is not null) season.With(Stamps, times);

        var data = season.Read();

        Ledger.Check(data);
        var told = string.Join("\n", data.HeldBack.Select(h => $"{h.File} line {h.Line} [{h.Column}] '{h.Value}': {h.Reason} {h.Remedy}"));
        Assert.True(told.Contains(said, StringComparison.OrdinalIgnoreCase), told + string.Join("\n", data.Notes.Select(n => n.Text)));
        Assert.DoesNotContain("Exception", told, StringComparison.Ordinal);
        var kept = data.Days.SelectMany(d => d.Athletes).SelectMany(a => a.Of<ContactTrial>()).ToList();
        Assert.Equal(rowStays ? 1 : 0, kept.Count);
    }

    [Theory]
    [InlineData("2.0", "200", "It looks like cm; if it is, name the key length_cm")]
    [InlineData("2.0", "0.02", "must be from 0.2 to 30 m; got 0.02")]
    [InlineData("\"low\"", "\"high\"", "the same marker 'high' at both ends")]
    [InlineData("240", "0", "rate_hz")]
    [InlineData("1080", "10", "picture_height_px")]
    public void Read_BrokenVideoSettings_SaysSo(string right, string wrong, string said)
    {
        using var season = RunnerClip.Season(RunnerClip.Video.Replace(right, wrong, StringComparison.Ordinal)).With(Table, Good.Row()).With(Clip, Good.Long());
        Assert.Contains(said, Assert.Throws<SeasonException>(() => season.Read()).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("shoulder")]
    [InlineData("hip")]
    [InlineData("ankle")]
    public void Read_PointOutOfLine_LosesThatPointOnly(string marker)
    {
        using var season = RunnerClip.Season().With(Table, Good.Row())
            .With(Clip, RunnerClip.Long(Good.Points().Select(p => p.Marker == marker && p.Frame == 50 ? p with { Y = p.Y - 90 } : p)));

        var data = season.Read();

        Ledger.Check(data);
        var held = Assert.Single(data.HeldBack);
        Assert.Contains($"Marker '{marker}' jumps", held.Reason, StringComparison.Ordinal);
        Assert.Contains("at frame 50; the point was left out", held.Reason, StringComparison.Ordinal);
        Assert.NotNull(Assert.Single(data.Days[0].Athletes[0].Of<ContactTrial>()).Digitised);
    }

    [Fact]
    public void Read_Checked_KeepsWhatTheCoachStandsBy()
    {
        using var season = RunnerClip.Season().With(Table, Good.Row(hertz: 30, more: ",yes", moreHead: ",checked")).With(Clip, Good.Long());
        Assert.Empty(season.Read().HeldBack);
    }

    // Half the rate doubles the time: found against five others over the same gap.
    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    public void Read_OneRateUnlikeTheOthers_IsHeldBack(int typed)
    {
        var rows = "athlete_id,clip,rate_hz,first_movement_frame,contact_frame,gap_m\n" +
            string.Concat(Enumerable.Range(1, 7).Select(i => string.Create(CultureInfo.InvariantCulture, $"P001,c{i},{(i == 4 ? typed : 240)},10,{110 + i},0.5\n")));
        using var season = RunnerClip.Season().With(Table, rows);

        var data = season.Read();

        var held = Assert.Single(data.HeldBack);
        Assert.Equal(5, held.Line);
        Assert.Contains("the rate looks like 240 Hz", held.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_OneFileForTwoRepetitions_IsNotUsed()
    {
        using var season = RunnerClip.Season().With(Table, "athlete_id,attempt,clip,first_movement_frame,contact_frame\nP001,1,a,12,115\nP002,1,a,12,115\n").With(Clip, Good.Long());

        var data = season.Read();

        Ledger.Check(data);
        Assert.Contains("Several repetitions name this clip (P001 attempt 1 and P002 attempt 1)", Assert.Single(data.HeldBack).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("P001,1,a,115,12", "comes before first movement")]
    [InlineData("P001,1,a,12,12", "both at frame 12")]
    [InlineData("P001,1,a,12,", "contact_frame")]
    [InlineData("P001,1,a,12,11x", "not a")]
    [InlineData("P001,1,,12,115", "clip")]
    [InlineData("P001,1,../a,12,115", "no name of a clip")]
    [InlineData("P001,1,.hidden,12,115", "no name of a clip")]
    [InlineData("P099,1,a,12,115", "P099")]
    [InlineData("P001,1,a,12,90000", "allowed 0.05 to 5 s")]
    [InlineData("P001,1,a,12,14", "allowed 0.05 to 5 s")]
    [InlineData("P001,1,a,-3,115", "-3")]
    public void Read_BrokenRow_IsHeldBack(string row, string said)
    {
        using var season = RunnerClip.Season().With(Table, "athlete_id,attempt,clip,first_movement_frame,contact_frame\n" + row + "\n");

        var data = season.Read();

        Ledger.Check(data);
        var held = Assert.Single(data.HeldBack);
        Assert.Contains(said, held.Reason + held.Value + held.Column, StringComparison.Ordinal);
        Assert.NotEmpty(held.Remedy);
    }

    [Fact]
    public void Read_HostileNames_AreShownAsText()
    {
        using var season = RunnerClip.Season().With(Table, "athlete_id,attempt,clip,first_movement_frame,contact_frame\nP001,1,<img src=x onerror=alert(1)>,12,115\n");
        var trial = Assert.Single(season.Read().Days[0].Athletes[0].Of<ContactTrial>());
        Assert.Equal("<img src=x onerror=alert(1)>", trial.Clip);
    }

    private static string Lines(int count, double hertz)
        => "frame,time_s\n" + string.Concat(Enumerable.Range(0, count).Select(f => string.Create(CultureInfo.InvariantCulture, $"{f},{f / hertz:0.0000}\n")));
}
