using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Clips;

/// <summary>Clips in order pass, whatever their form, direction, rate and y axis.</summary>
public sealed class ClipReadingTests
{
    private const string Table = RunnerClip.Day + "contact.csv";
    private const string Clip = RunnerClip.Day + "clips/a.csv";

    private static ContactTrial Only(SeasonData data) => Assert.Single(Assert.Single(data.Days).Athletes.SelectMany(a => a.Of<ContactTrial>()));

    [Theory]
    [InlineData(240, false)]
    [InlineData(240, true)]
    [InlineData(120, false)]
    [InlineData(60, false)]
    [InlineData(60, true)]
    public void Read_CleanClip_GivesPointsInMetresForward(double hertz, bool left)
    {
        var clip = new RunnerClip { Hertz = hertz, Left = left };
        using var season = RunnerClip.Season().With(Table, clip.Row(travel: left ? "left" : "right")).With(Clip, clip.Long());

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.Empty(data.Notes);
        var trial = Only(data);
        Assert.Equal(left ? Travel.Left : Travel.Right, trial.Travel);
        var hip = trial.Digitised![MarkerRole.Hip];
        // x = a/2 t² forward with a = 5 m/s² by the making of the clip: 0.462 m in 0.43 s, to a few px of 5 mm.
        var way = hip[clip.ContactFrame]!.Value.XMetres - hip[clip.Rest]!.Value.XMetres;
        Assert.Equal(0.5 * 5 * Math.Pow((clip.ContactFrame - clip.Rest) / hertz, 2), way, 0.02);
        Assert.Equal(0.51 * 1.83, hip[0]!.Value.YMetres, 0.03);
        Assert.Equal(clip.Points().Count, data.Files.Single(f => f.Path == Clip).Kept);
        // Two readings of each end at 1.5 px over 400 px: √2·1.5/400/√2.
        Assert.Equal(0.00375, trial.Digitised.ScaleRelativeSd!.Value, 0.0001);
        Assert.Equal(64, data.Files.Single(f => f.Path == Clip).Sha256.Length);
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, true)]
    [InlineData(true, false)]
    public void Read_NoTravelInTheRow_IsFoundFromThePoints(bool left, bool up)
    {
        var clip = new RunnerClip { Left = left, YUp = up };
        using var season = RunnerClip.Season(up ? RunnerClip.Video.Replace("\"picture", "\"y_axis\":\"up\",\"picture", StringComparison.Ordinal) : RunnerClip.Video).With(Table, clip.Row()).With(Clip, clip.Long());

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.Equal(left ? Travel.Left : Travel.Right, Only(data).Travel);
    }

    [Theory]
    [InlineData(',', '.')]
    [InlineData(';', ',')]
    [InlineData('\t', '.')]
    public void Read_Wide_GivesTheSameAsLong(char separator, char mark)
    {
        var clip = new RunnerClip();
        using var longSeason = RunnerClip.Season().With(Table, clip.Row()).With(Clip, clip.Long());
        using var wideSeason = RunnerClip.Season().With(Table, clip.Row()).With(Clip, clip.Wide(separator, mark));

        DigitisedClip points = Only(longSeason.Read()).Digitised!, wide = Only(wideSeason.Read()).Digitised!;

        Assert.Equal(points.Count, wide.Count);
        foreach (var role in points.Tracks.Select(t => t.Role))
            Assert.Equal(points[role].XMetres, wide[role].XMetres);
    }

    [Fact]
    public void Read_TimeStamps_ReplaceTheRate()
    {
        var clip = new RunnerClip();
        var stamps = "frame,time_s\n" + string.Join('\n', Enumerable.Range(0, clip.ContactFrame + 20).Select(f => FormattableString.Invariant($"{f},{f / 120.0:0.0000}")));
        using var season = RunnerClip.Season().With(Table, clip.Row()).With(Clip, clip.Long()).With(RunnerClip.Day + "clips/a.times.csv", stamps);

        var data = season.Read();

        Assert.Equal(120, Only(data).Clock.Rate.Hertz, 0.01);
        Assert.Equal(clip.ContactFrame + 20, data.Files.Single(f => f.Path.EndsWith("a.times.csv", StringComparison.Ordinal)).Kept);
        Assert.Contains(data.Notes, n => n.Text.Contains("240 Hz, its time stamps 120 Hz; the time stamps were used", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_SeveralReadings_AreOneRepetition()
    {
        using var season = RunnerClip.Season().With(Table, "athlete_id,clip,attempt,reading,first_movement_frame,contact_frame,gap_yd,against\nP001,a,1,2,13,115,0.5,bag\nP001,A,1,,12,115,0.5,Bag\nP001,b,,,12,115,0.5,P002\nP001,b,,,14,116,0.5,p002\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        var trials = data.Days[0].Athletes[0].Of<ContactTrial>().ToList();
        Assert.Equal([1, 2], trials.Select(t => t.Attempt));
        Assert.Equal([1, 2], trials[0].Readings.Select(r => r.Number));
        Assert.Equal([12, 13], trials[0].Readings.Select(r => r.FirstMovement.Frame));
        Assert.Equal([12, 14], trials[1].Readings.Select(r => r.FirstMovement.Frame));
        Assert.Equal(("bag", "P002"), (trials[0].Against.ToString(), trials[1].Against.ToString()));
        Assert.Equal(0.4572, trials[0].Gap!.Value.Metres, 9);
        Assert.Equal(4, data.Files.Single(f => f.Path == Table).Kept);
        Assert.Equal("There is no clips/a.csv and no such file for 1 more (a, b), so only the times of events are used.", Assert.Single(data.Notes).Text);
    }

    [Fact]
    public void Read_Steps_AreGroundContacts()
    {
        using var season = RunnerClip.Season().With(Table, "athlete_id,clip,first_movement_frame,contact_frame,steps\nP001,a,12,115,31-49 58-77f 84\nP001,b,12,115,\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        var trials = data.Days[0].Athletes[0].Of<ContactTrial>().ToList();
        Assert.Equal([new FootContact(false, 31, 49), new FootContact(true, 58, 77), new FootContact(false, 84, null)], trials[0].Steps);
        Assert.Empty(trials[1].Steps);
    }

    [Theory]
    [InlineData("31-49-50", "is no step")]
    [InlineData("31-49 x", "is no step")]
    [InlineData("49-31", "toe-off at frame 31 must come after touchdown at frame 49")]
    [InlineData("31-60 58-77", "comes before toe-off of step 1")]
    [InlineData("58-77 31-49", "List contacts in order")]
    public void Read_BrokenSteps_AreHeldBack(string steps, string said)
    {
        using var season = RunnerClip.Season().With(Table, $"athlete_id,clip,first_movement_frame,contact_frame,steps\nP001,a,12,115,{steps}\n");
        var held = Assert.Single(season.Read().HeldBack);
        Assert.Equal("steps", held.Column);
        Assert.Contains(said, held.Reason, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Read_Workbook_UsesTheClipsOfTheFolderOfTheDay()
    {
        var clip = new RunnerClip();
        using var season = RunnerClip.Season().With(Clip, clip.Long())
            .With("testing/2026-03-02.xlsx", TestWorkbook.Of(("contact", [["athlete_id", "clip", "first_movement_frame", "contact_frame"], ["P001", "a", 12.0, (double)clip.ContactFrame]])));

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.NotNull(Only(data).Digitised);
    }

    [Fact]
    public void Read_OtherNames_AreMappedAndTheRestIsRemarked()
    {
        var clip = new RunnerClip();
        var points = clip.Points().Select(p => p with { Marker = p.Marker is "hip" ? "Greater Trochanter" : p.Marker }).Append((5, "Shoulderr", 500, 500)).Append((5, "ball", 500, 500));
        using var season = RunnerClip.Season(RunnerClip.Video.Replace("\"calib", "\"markers\":{\"greater-trochanter\":\"hip\"},\"calib", StringComparison.Ordinal)).With(Table, clip.Row()).With(Clip, RunnerClip.Long(points));

        var data = season.Read();

        Assert.Equal("Greater Trochanter", Only(data).Digitised![MarkerRole.Hip].Name);
        Assert.Contains("their 2 points not used: 'Shoulderr' (did you mean shoulder?), 'ball'", Assert.Single(data.Notes).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_MissingFramesMarkersAndEvents_AreRemarked()
    {
        var clip = new RunnerClip();
        using var season = RunnerClip.Season().With(Table, clip.Row()).With(Clip, RunnerClip.Long(clip.Points().Where(p => p.Marker != "ankle" && p.Frame < clip.ContactFrame && !(p.Marker is "hip" && p.Frame is > 30 and < 35))));

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.Null(Only(data).Digitised![MarkerRole.Hip].XMetres[32]);
        Assert.Equal(
        [
            "There is no marker for ankle; not measured without: lean of the shin, angle of the knee.",
            "1 gap in the points: 'hip' frames 31 to 34.",
            $"The points cover frames 0 to {clip.ContactFrame - 1}, but there is an event at frame {clip.ContactFrame}; what is measured there is left out.",
        ], data.Notes.Select(n => n.Text));
    }

    [Fact]
    public void Read_ClipsNobodyNames_AreRemarked()
    {
        using var season = RunnerClip.Season().With(Table, new RunnerClip().Row()).With(Clip, new RunnerClip().Long()).With(RunnerClip.Day + "clips/b.csv", "x").With(RunnerClip.Day + "clips/a.mp4", "x");

        Assert.Equal(["No kept row of contact names the clip 'b', so the file was not read.", "Not read, because only .csv files of points and time stamps are: a.mp4."], season.Read().Notes.Select(n => n.Text));
    }

    [Fact]
    public void Read_HundredThousandRows_AreAllCounted()
    {
        var clip = new RunnerClip();
        var last = clip.Points().Where(p => p.Frame == clip.ContactFrame).ToList();
        var still = Enumerable.Range(clip.ContactFrame + 11, 25_000).SelectMany(f => last.Select(p => (f, p.Marker, p.X + f % 3, p.Y + f % 2)));
        using var season = RunnerClip.Season().With(Table, clip.Row(more: ",yes", moreHead: ",checked")).With(Clip, RunnerClip.Long(clip.Points().Concat(still)));

        var data = season.Read();

        Assert.Equal(100_000 + clip.Points().Count, data.Files.Single(f => f.Path == Clip).Kept);
        Assert.Equal(clip.ContactFrame + 25_011, Only(data).Digitised!.Count);
    }
}
