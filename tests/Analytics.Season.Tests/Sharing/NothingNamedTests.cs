using System.Text.RegularExpressions;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Sharing;

/// <summary>A shared season names nobody, anywhere in it.</summary>
public sealed class NothingNamedTests : IDisposable
{
    private readonly TemporarySeason hostile = HostileSeason.Make();
    private readonly DirectoryInfo demo = Directory.CreateTempSubdirectory("demo-season-");

    public void Dispose()
    {
        hostile.Dispose();
        demo.Delete(recursive: true);
    }

    [Theory]
    [InlineData("codes")]
    [InlineData("initials")]
    public void Open_HostileSeason_NamesNobody(string share)
    {
        var data = SeasonShelf.Open(hostile.Folder, share: share);

        Assert.Empty(Found(data, HostileSeason.People));
        Ledger.Check(data);
    }

    [Fact]
    public void Open_HostileSeasonWithNames_NamesEveryone()
    {
        var data = SeasonShelf.Open(hostile.Folder);
        var texts = EveryText.Of(data).Distinct().ToList();

        // Else the test above would look where nothing is.
        Assert.All(HostileSeason.People.Except(["ODreeve"]), p => Assert.Contains(texts, t => Token(p).IsMatch(t)));
        Assert.True(data.HeldBack.Count > 20, string.Join('\n', data.HeldBack));
        Assert.Equal(11, data.Training.OwnFiles.Count);
        Assert.Equal((3, 1, 3, 2), (data.Training.Restrictions.Count, data.Training.Sessions.Count, data.Training.Earlier.Count, data.Training.Targets.Count));
    }

    [Theory]
    [InlineData("codes")]
    [InlineData("initials")]
    public void Open_NumberAsIdentifier_IsNobodysNumberAnyMore(string share)
    {
        var data = SeasonShelf.Open(hostile.Folder, share: share);

        Assert.DoesNotContain("17", EveryText.Of(data));
        Assert.DoesNotContain(EveryText.Of(data), t => t.Contains("'17'", StringComparison.Ordinal) || t.StartsWith("17 ", StringComparison.Ordinal) || t.Contains("020 7946", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("codes")]
    [InlineData("initials")]
    public void Open_EarlierSeasonWithOtherNames_NamesNobody(string share)
    {
        using var earlier = new TemporarySeason()
            .With("season.json", TwoSeasons.EarlierSettings.Replace("Spring 2025", "2025 of Zoltan Quenby", StringComparison.Ordinal))
            .With("athletes.csv", "athlete_id,name,group\nab,Zoltan Morwenna,Kickers\nP99,Ottoline Gristwood,Kickers\n")
            .With("sessions.csv", "date,athlete_id,focus,minutes\n2025-02-03,ab,Morwenna and Ottoline,60\n2025-02-04,Pelham,x,60\n")
            .With("testing/2025-01-20/contact.csv", "athlete_id,attempt,clip,rate_hz,first_movement_frame,contact_frame,against\nP99,1,ottoline,240,12,115,ab\n");

        var data = SeasonShelf.Open(hostile.Folder, earlier.Folder, share);

        Assert.Empty(Found(data, [.. HostileSeason.People, "P99"]));
        Assert.Equal(7, data.Athletes.Count);
        Ledger.Check(data);
    }

    [Theory]
    [InlineData("codes")]
    [InlineData("initials")]
    public void Open_DemoSeason_NamesNobody(string share)
    {
        CopyDemo();
        var names = SeasonReader.Read(demo.FullName);
        var data = SeasonShelf.Open(demo.FullName, share: share);

        Assert.Empty(Found(data, [.. names.Athletes.SelectMany(a => a.Name.Split(' ', '-').Where(n => n.Length > 2).Append(a.Id))]));
        Ledger.Check(data);
    }

    [Theory]
    [InlineData("codes")]
    [InlineData("initials")]
    public void Open_SeasonThatCannotBeUsed_NamesNobody(string share)
    {
        hostile.With("athletes.csv", "AB,Zoltan Quenby,LB\nP8,Ottoline Wexcombe,OT\n");

        var named = Assert.Throws<SeasonException>(() => SeasonShelf.Open(hostile.Folder)).Message;
        var shared = Assert.Throws<SeasonException>(() => SeasonShelf.Open(hostile.Folder, share: share));

        Assert.Contains("Zoltan Quenby", named, StringComparison.Ordinal);
        Assert.Equal("athletes.csv cannot be used: line 1: The column athlete_id is missing; the head has: (not shown), (not shown), (not shown). Add a column athlete_id, or check that the first line is the head. The command check shows where it stands and what.", shared.Message);
        Assert.Null(shared.InnerException);
    }

    private void CopyDemo()
    {
        var from = Path.Combine(Repository.Root, "data-demo");
        foreach (var file in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(demo.FullName, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    private static List<string> Found(SeasonData data, IReadOnlyList<string> people)
    {
        var any = Token([.. people]);
        return [.. EveryText.Of(data).Distinct().Where(t => any.IsMatch(t)).Select(t => $"{any.Match(t)} in: {t}")];
    }

    private static Regex Token(params string[] words) => new($@"(?<![\p{{L}}\p{{N}}])({string.Join('|', words.Select(Regex.Escape))})(?![\p{{L}}\p{{N}}])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
