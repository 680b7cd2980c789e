using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>The report of a season, block by block. Each member is an output of a notebook cell.</summary>
public sealed class SeasonReport
{
    private readonly SeasonContext _season;

    private SeasonReport(SeasonContext season) => _season = season;

    /// <summary>Opens a season, and earlier ones if there are any.</summary>
    /// <param name="season">Season folder.</param>
    /// <param name="earlier">Earlier season folders, oldest first, separated by semicolons; empty for none.</param>
    /// <param name="share">How players are named: <c>names</c>, <c>initials</c> or <c>codes</c>.</param>
    /// <param name="from">First testing day counted, as <c>yyyy-mm-dd</c>, or <c>first</c>.</param>
    /// <param name="to">Last testing day counted, as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <exception cref="SeasonException">A season cannot be used, or there is no such day; the message says what to do.</exception>
    public static SeasonReport Open(string season, string earlier = "", string share = "names", string from = "first", string to = "latest")
        => Of(SeasonShelf.Open(season, earlier, share), from, to);

    /// <summary>The report of a season that was read before.</summary>
    /// <param name="season">The season.</param>
    /// <param name="from">First testing day counted, as <c>yyyy-mm-dd</c>, or <c>first</c>.</param>
    /// <param name="to">Last testing day counted, as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <exception cref="SeasonException">There is no such day; the message lists those there are.</exception>
    public static SeasonReport Of(SeasonData season, string from = "first", string to = "latest")
    {
        ArgumentNullException.ThrowIfNull(season);
        return new(new SeasonContext(season, ReportDays.Of(season, from, to)));
    }

    /// <summary>
    /// The same report with metrics on trial besides: in the squad's change, trends, who changed, transfer, advice on tests and methods, marked there. The
    /// answers at the top stay with reviewed metrics, and no number of theirs changes. One that fails is told under the head and stops nothing.
    /// </summary>
    /// <param name="sketches">Sketches, in the order they are to stand.</param>
    public SeasonReport With(params MetricSketch[] sketches)
    {
        ArgumentNullException.ThrowIfNull(sketches);
        return new(_season.With(sketches));
    }

    /// <summary>The season as read.</summary>
    public SeasonData Season => _season.Data;

    /// <summary>Title, club, who and when.</summary>
    public Block Head()
    {
        var (first, last) = (_season.Days[0].Date, _season.Days[^1].Date);
        var tested = _season.Squad.Count(a => _season.Days.Any(d => _season.Presence.On(d).Contains(a.Id)));
        var oldest = _season.Data.Earlier.FirstOrDefault(s => s.To >= first);
        var head = new ReportHead($"Season report, {(oldest is null ? "" : oldest.Name + " to ")}{_season.Data.Settings.Season}", _season.Data.Settings.Club,
            $"{Words.PlayersOf(tested, _season.Squad.Count)} tested on {_season.Days.Count} {(_season.Days.Count == 1 ? $"day, {Words.Date(last)}" : $"days, {(first.Year == last.Year ? Words.ShortDate(first) : Words.Date(first))} to {Words.Date(last)}")}");
        return TrialNotes.Under(head, _season.OnTrial, "The answers below, dose beside change and the counts of what chance gives to groups", _season.Name, _season.Day);
    }

    /// <summary>The four answers a head coach needs.</summary>
    public Block Answers() => SeasonAnswers.Of(_season);

    /// <summary>The squad's change in every measure against what matters.</summary>
    public Block SquadChange() => SquadChangeBlock.Of(_season);

    /// <summary>Where the squad and its groups stood on every occasion, players behind.</summary>
    public Block Trends() => TrendBlock.Of(_season);

    /// <summary>Players with clear gains and losses, and what chance alone would give.</summary>
    public Block WhoChanged() => PlayersBlock.Of(_season);

    /// <summary>How far true changes differ between players.</summary>
    public Block HowGainsDiffer() => ResponseBlock.Of(_season);

    /// <summary>Whether weight-room gains went with field gains.</summary>
    public Block Transfer() => TransferBlock.Of(_season);

    /// <summary>What training was done, and dose beside change; where plans were kept, what they asked for, what was done of it and what came of it.</summary>
    public Block Load()
    {
        var training = _season.Data.Training;
        return PlanBlock.Of(_season, training.Earlier, training.Exercises) is { } planned ? new Together(LoadBlock.Of(_season), planned) : LoadBlock.Of(_season);
    }

    /// <summary>What each test is worth: keep, mend or drop.</summary>
    public Block Tests() => TestsBlock.Of(_season);

    /// <summary>Who took part on which day, and who was out.</summary>
    public Block WhoTookPart() => TookPartBlock.Of(_season);

    /// <summary>What was held back and what would mend it.</summary>
    public Block HeldBack() => HeldBackBlock.Of(_season.Data);

    /// <summary>Methods and sources.</summary>
    public Block Methods() => SeasonMethods.Of(_season);

    /// <summary>The cautions that travel with the report.</summary>
    public Block Cautions() => SeasonMethods.Cautions(_season);

    /// <summary>Files, digests and choices behind the report.</summary>
    public Block Provenance() => ProvenanceBlock.Of(_season.Data,
        ("Testing days", $"{Words.Date(_season.Days[0].Date)} to {Words.Date(_season.Days[^1].Date)}"));
}
