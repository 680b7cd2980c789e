using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>Seasons of which nothing can be read: one exception, in plain words.</summary>
public sealed class UnusableSeasonTests
{
    private static string Fault(string folder) => Assert.Throws<SeasonException>(() => SeasonReader.Read(folder)).Message;

    [Theory]
    [InlineData("", "No season folder was given")]
    [InlineData("no-such-folder-anywhere", "There is no season folder 'no-such-folder-anywhere'")]
    public void Read_NoFolder_SaysSo(string folder, string says) => Assert.Contains(says, Fault(folder), StringComparison.Ordinal);

    [Fact]
    public void Read_FolderIsFile_SaysSo()
    {
        using var season = new TemporarySeason();

        Assert.Contains("is a file, not a season folder", Fault(Path.Combine(season.Folder, "season.json")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("season.json", "There is no season.json in the folder")]
    [InlineData("athletes.csv", "There is no athletes.csv in the season folder")]
    public void Read_NeededFileMissing_SaysSo(string file, string says)
    {
        using var season = new TemporarySeason().Without(file);

        Assert.Contains(says, Fault(season.Folder), StringComparison.Ordinal);
    }

    public static TheoryData<string, string> BrokenSettings => new()
    {
        { "", "season.json cannot be used: the file is empty." },
        { "[1,2]", "must hold one object" },
        { "{\n\"club\":\"A\"\n\"season\":\"B\"}", "not valid JSON at line 3" },
        { "{\"club\":\"A\",\"season\":\"B\",\"from\":\"2026-01-05\",\"to\":\"2026-07-31\"", "not valid JSON" },
        { new string('[', 5000), "not valid JSON" },
        { "{\"club\":" + new string('{', 100) + "}", "not valid JSON" },
        { "\0\0binary", "binary data" },
        { "{\"season\":\"B\",\"from\":\"2026-01-05\",\"to\":\"2026-07-31\"}", "'club' is missing" },
        { "{\"club\":7,\"season\":\"B\",\"from\":\"2026-01-05\",\"to\":\"2026-07-31\"}", "'club' must be text in quotes, not empty; got 7" },
        { "{\"club\":\"A\",\"season\":\" \",\"from\":\"2026-01-05\",\"to\":\"2026-07-31\"}", "'season' must be text in quotes, not empty" },
        { "{\"club\":\"A\",\"season\":\"B\",\"from\":20260105,\"to\":\"31.07.2026\"}", "'from' must be a date like \"2026-01-05\"; got 20260105. 'to' must be a date like \"2026-01-05\"; got \"31.07.2026\"." },
        { "{\"club\":\"A\",\"season\":\"B\",\"from\":\"2026-07-31\",\"to\":\"2026-01-05\"}", "'from' (2026-07-31) is after 'to' (2026-01-05)" },
        { With("\"units\":{\"mass\":\"stone\"}"), "'units.mass' must be one of lb, kg; got \"stone\"" },
        // A share of nothing would make every change worthwhile.
        { With("\"worthwhile\":{\"share\":0}"), "'worthwhile.share' must be a number from 0.01 to 2; got 0" },
        { With("\"units\":\"lb\""), "'units' must be an object { ... }; got \"lb\"" },
        { With("\"defaults\":{\"timing\":\"stopwatch\"}"), "'defaults.timing' must be one of electronic, hand, video; got \"stopwatch\"" },
        { With("\"retests\":[[\"2026-01-22\",\"2026-01-19\"]]"), "'retests' holds [\"2026-01-22\",\"2026-01-19\"]" },
        { With("\"retests\":[\"2026-01-22\"]"), "each retest is two testing days" },
        { With("\"retests\":{}"), "'retests' must be a list [ ... ]; got {}" },
        { With("\"worthwhile\":{\"share\":\"much\"}"), "'worthwhile.share' must be a number from 0.01 to 2; got \"much\"" },
        { With("\"worthwhile\":{\"sprint_10yd\":-1}"), "'worthwhile.sprint_10yd' must be a number above 0; got -1" },
        { With("\"worthwhile\":{\"sprint_10yd\":1e999}"), "'worthwhile.sprint_10yd' must be a number above 0; got 1e999" },
        { With("\"test_minutes\":{\"body_mass\":0}"), "'test_minutes.body_mass' must be a number above 0; got 0" },
        { With("\"test_minutes\":{\"body_mass\":\"six\"}"), "'test_minutes.body_mass' must be a number above 0; got \"six\"" },
        { With("\"test_minutes\":6"), "'test_minutes' must be an object { ... }; got 6" },
        { With("\"club\":\"C\""), "'club' is given more than once" },
    };

    [Theory]
    [MemberData(nameof(BrokenSettings))]
    public void Read_BrokenSettings_NamesKeyAndValue(string text, string says)
    {
        using var season = new TemporarySeason().With("season.json", text);

        var message = Fault(season.Folder);

        Assert.Contains(says, message, StringComparison.Ordinal);
        Assert.StartsWith("season.json", message, StringComparison.Ordinal);
        Assert.True(message.Length < 600, message);
    }

    [Theory]
    [InlineData("", "athletes.csv cannot be used: The file is empty.")]
    [InlineData("athlete_id,name,position,group\n", "it has a head but no athletes")]
    [InlineData("id,who\n1,2\n", "line 1: The column athlete_id is missing; the head has: id, who.")]
    [InlineData("athlete_id,name\n,Ada Stone\n", "line 2: There is no athlete_id.")]
    public void Read_BrokenAthletes_SaysWhereAndWhy(string text, string says)
    {
        using var season = new TemporarySeason().With("athletes.csv", text);

        Assert.Contains(says, Fault(season.Folder), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_Cancelled_Stops()
    {
        using var season = new TemporarySeason();
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => SeasonReader.Read(season.Folder, source.Token));
    }

    private static string With(string more) => "{\"club\":\"A\",\"season\":\"B\",\"from\":\"2026-01-05\",\"to\":\"2026-07-31\"," + more + "}";
}
