using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.OnTrial;
using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>The report of one testing day, block by block. Each member is the output of one notebook cell.</summary>
public sealed class TestingDayReport
{
    private readonly DayContext _day;

    private TestingDayReport(DayContext day) => _day = day;

    /// <summary>Reads a season and picks the days.</summary>
    /// <param name="season">Season folder.</param>
    /// <param name="day">Testing day as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <param name="since">Day to compare with: <c>previous</c>, <c>first</c>, <c>none</c> or a date.</param>
    /// <exception cref="SeasonException">The season cannot be used, or there is no such day; the message says what to do.</exception>
    public static TestingDayReport Open(string season, string day = "latest", string since = "previous")
        => Of(SeasonReader.Read(season), day, since);

    /// <summary>The report of a season that was read before.</summary>
    /// <param name="season">The season.</param>
    /// <param name="day">Testing day as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <param name="since">Day to compare with: <c>previous</c>, <c>first</c>, <c>none</c> or a date.</param>
    /// <exception cref="SeasonException">There is no such day; the message lists those there are.</exception>
    public static TestingDayReport Of(SeasonData season, string day = "latest", string since = "previous")
    {
        ArgumentNullException.ThrowIfNull(season);
        return new(new DayContext(season, DayChoice.From(season, day, since)));
    }

    /// <summary>
    /// The same report with metrics on trial besides: in the pictures, the changes, a table of their own and the methods, marked there. The answers at the
    /// top and the needs stay with reviewed metrics, and no number of theirs changes. One that fails is told under the head and stops nothing.
    /// </summary>
    /// <param name="sketches">Sketches, in the order they are to stand.</param>
    public TestingDayReport With(params MetricSketch[] sketches)
    {
        ArgumentNullException.ThrowIfNull(sketches);
        return new(_day.With(sketches));
    }

    /// <summary>The season as read.</summary>
    public SeasonData Season => _day.Season;

    /// <summary>Title, club, who and when.</summary>
    public Block Head() => TrialNotes.Under(
        new ReportHead(
            $"Testing day, {Words.Date(_day.Today.Date)}",
            _day.Season.Settings.Club,
            $"{Words.PlayersOf(SquadAnswer.Tested(_day), _day.Season.Athletes.Count)} tested"
            + (_day.Before is null ? "" : $", compared with {Words.ShortDate(_day.Before.Date)}")),
        _day.OnTrial, "The answers below and the needs", _day.Name, Words.ShortDate);

    /// <summary>The three answers a head coach needs.</summary>
    public Block Answers() => new Answers(SquadAnswer.Of(_day), PlayerAnswer.Of(_day), NeedAnswer.Of(_day));

    /// <summary>Who was tested and who was not.</summary>
    public Block WhoWasTested() => Attendance.Of(_day);

    /// <summary>Where each position group stands in the headline measures.</summary>
    public Block WhereGroupsStand() => StandingBlock.Of(_day);

    /// <summary>Who changed since the day before, in the headline measures.</summary>
    public Block WhoChanged() => ChangeBlock.Of(_day, [.. _day.Headlines, .. _day.OnTrial.Metrics]);

    /// <summary>Who changed since the day before, in measures of your choice.</summary>
    /// <param name="metrics">Metric identifiers, see docs/metrics.md.</param>
    /// <exception cref="KeyNotFoundException">No such metric; the message lists the known ones.</exception>
    public Block WhoChanged(params string[] metrics)
        => ChangeBlock.Of(_day, [.. metrics.Select(id => _day.Metric(id) ?? MetricCatalogue.Get(id))]);

    /// <summary>Body mass against speed at ten yards, with curves of equal momentum.</summary>
    public Block WhatPlayersCarry() => MomentumBlock.Of(_day);

    /// <summary>Every player's results: strength, jumps and power, sprint and momentum.</summary>
    public Block Results() => new Section(ResultTables.Title, "Folded on a screen, open in print.", [
            StrengthTable(), JumpTable(), SprintTable(),
            _day.Today.Athletes.Any(a => a.Of<ContactTrial>().Any()) ? ContactTable() : new Together(),
            .. _day.OnTrial.Metrics.Count > 0 ? [TrialTable()] : Array.Empty<Block>(),
        ]);

    /// <summary>Strength of every player.</summary>
    public Block StrengthTable() => ResultTables.Of(_day, PlayerTable.Strength);

    /// <summary>Jumps, throws and stairs of every player.</summary>
    public Block JumpTable() => ResultTables.Of(_day, PlayerTable.Jumping);

    /// <summary>Sprints, speed, momentum and change of direction of every player.</summary>
    public Block SprintTable() => ResultTables.Of(_day, PlayerTable.Sprinting);

    /// <summary>Filmed contact of every player.</summary>
    public Block ContactTable() => ResultTables.Of(_day, PlayerTable.Contact);

    /// <summary>Metrics on trial of every player.</summary>
    public Block TrialTable() => ResultTables.Of(_day, PlayerTable.OnTrial);

    /// <summary>What each player most needs next, where the tests can say so.</summary>
    public Block Needs() => NeedsBlock.Of(_day);

    /// <summary>What was held back and what would mend it.</summary>
    public Block HeldBack() => HeldBackBlock.Of(_day);

    /// <summary>Methods and sources.</summary>
    public Block Methods() => MethodsBlock.Of(_day);

    /// <summary>The cautions that travel with the report.</summary>
    public Block Cautions() => CautionLines.Of(_day);

    /// <summary>Files, digests and choices behind the report.</summary>
    public Block Provenance() => ProvenanceBlock.Of(_day);
}
