using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.ContactReview;
using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.ContactReview;

public sealed class ContactReviewReportTests
{
    [Fact]
    public void Answers_SeasonWithoutClips_SayWhatToFilmAndNothingFails()
    {
        using var season = new WrittenSeason().Squad().Day("2026-01-12").Day("2026-01-15", wobble: 1);
        var review = ContactReviewReport.Open(season.Folder);
        Assert.Contains("No repetition on film yet", review.Answers().ToText(), StringComparison.Ordinal);
        Assert.All(All(review), b => Assert.DoesNotContain("NaN", b.ToHtml(), StringComparison.Ordinal));
        Assert.Contains("'2026-01-12'", Assert.Throws<SeasonException>(() => ContactReviewReport.Open(Filmed(season).Folder, "2026-01-12")).Message, StringComparison.Ordinal);
    }

    // 240 frames a second: 103 frames are 0.429 s, 144 are 0.600 s, 80 are 0.333 s; the error of frames and judgement is far smaller than the way to the window's edges.
    [Fact]
    public void Answers_FramesOnly_PlaceEveryPlayerAgainstTheWindow()
    {
        using var season = Filmed(new WrittenSeason().Squad().Day("2026-01-12"));
        var review = ContactReviewReport.Open(season.Folder);
        var text = review.Answers().ToText();
        Assert.Contains("of 12 reach contact inside", text, StringComparison.Ordinal);
        Assert.Contains("four later", text, StringComparison.Ordinal);
        Assert.Contains("Speed at contact: not measured", text, StringComparison.Ordinal);
        var times = review.TimesAgainstWindow().ToText();
        Assert.Contains("after the window", times, StringComparison.Ordinal);
        Assert.Contains("before the window", times, StringComparison.Ordinal);
        Assert.Contains("Digitise", review.FilmBetter().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Blocks_NamesThatAreMarkup_AreText()
    {
        using var season = Filmed(new WrittenSeason().Squad("<script>alert(1)</script>", i => $"<img src=x onerror=alert({i})>").Day("2026-01-12"));
        Assert.All(All(ContactReviewReport.Open(season.Folder)), b =>
        {
            var html = b.ToHtml();
            Assert.DoesNotContain("<img src=x", html, StringComparison.Ordinal);
            Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Demo_OtherPlayer_NeverStandsWithoutItsCautions()
    {
        var review = ContactReviewReport.Open(Path.Combine(Root(), "data-demo"));
        var text = review.TheOtherPlayer().ToText();
        Assert.Contains("kN", text, StringComparison.Ordinal);
        Assert.Contains("head out of the line of contact", text, StringComparison.OrdinalIgnoreCase);
        Assert.All(All(review), b => Assert.DoesNotContain("NaN", b.ToHtml(), StringComparison.Ordinal));
        Assert.Contains("Numbers as a table", review.Postures().ToHtml(), StringComparison.Ordinal);
    }

    [Fact]
    public void OtherPlayer_SeasonInKilogramsAndKilometresAnHour_SpeaksThem()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var demo = Path.Combine(Root(), "data-demo");
            foreach (var file in Directory.EnumerateFiles(demo, "*", SearchOption.AllDirectories))
            {
                var copy = Path.Combine(folder.FullName, Path.GetRelativePath(demo, file));
                Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
                File.Copy(file, copy);
            }

            var settings = Path.Combine(folder.FullName, "season.json");
            File.WriteAllText(settings, File.ReadAllText(settings).Replace("\"mass\": \"lb\"", "\"mass\": \"kg\"", StringComparison.Ordinal).Replace("\"speed\": \"mph\"", "\"speed\": \"km/h\"", StringComparison.Ordinal));
            var text = ContactReviewReport.Open(folder.FullName).TheOtherPlayer().ToText();
            Assert.Contains("110\u2009kg (243\u2009lb)", text, StringComparison.Ordinal);
            Assert.Contains("km/h", text, StringComparison.Ordinal);
            Assert.DoesNotContain("mph", text, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static WrittenSeason Filmed(WrittenSeason season)
    {
        int[] frames = [103, 144, 80];
        return season.Write("testing/2026-01-15/contact.csv", "athlete_id;attempt;clip;rate_hz;first_movement_frame;contact_frame;gap_m\n" + string.Concat(
            from player in Enumerable.Range(1, WrittenSeason.Players)
            from attempt in new[] { 1, 2 }
            select string.Create(CultureInfo.InvariantCulture, $"{WrittenSeason.Id(player)};{attempt};c{player}-{attempt};240;20;{20 + frames[player % 3]};0,5\n")));
    }

    private static Block[] All(ContactReviewReport r) =>
    [
        r.Head(), r.Answers(), r.TimesAgainstWindow(), r.TimeLines(), r.Postures(), r.AngleCurves(), r.WhatPlayersCarry(), r.WhatWouldChangeIt(),
        r.TheOtherPlayer(), r.PlayerTable(), r.FilmBetter(), r.HeldBack(), r.Methods(), r.Cautions(), r.Provenance(),
    ];

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Analytics.sln"))) folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
