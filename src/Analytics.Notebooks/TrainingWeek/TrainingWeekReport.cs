using System.Diagnostics.CodeAnalysis;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>
/// The training week, block by block: from what the tests say to what is done on Tuesday, and why. Each member is the output of one notebook cell; see docs/training-week.md.
/// </summary>
/// <example>
/// <code>
/// var week = TrainingWeekReport.Open(SeasonShelf.Open("../data-demo"), week: "next");
/// week.Sheets();
/// </code>
/// </example>
public sealed class TrainingWeekReport
{
    private readonly WeekContext _week;
    private readonly string _athlete;

    private TrainingWeekReport(WeekContext week, string athlete) => (_week, _athlete) = (week, athlete);

    /// <summary>Plans a week.</summary>
    /// <param name="season">The season.</param>
    /// <param name="week"><c>next</c>: the first week of the calendar after the last testing day; or any day of a week as <c>yyyy-mm-dd</c>.</param>
    /// <param name="phase"><c>auto</c>: the calendar; or the usual week of a phase, <c>off_season</c>, <c>pre_season</c>, <c>in_season</c>.</param>
    /// <param name="athlete">An <c>athlete_id</c> for his own sheet, or <c>none</c>.</param>
    /// <exception cref="SeasonException">A setting that means nothing, or a week outside the season; the message says what to do.</exception>
    public static TrainingWeekReport Open(SeasonData season, string week = "next", string phase = "auto", string athlete = "none")
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(week);
        ArgumentNullException.ThrowIfNull(phase);
        ArgumentNullException.ThrowIfNull(athlete);
        var context = new WeekContext(season, season.Training, WeekChoice.Of(season, season.Training, week, phase));
        if (athlete != "none" && context.Squad.Players.All(p => p.Id != athlete))
            throw new SeasonException(context.Squad.Out.Any(o => o.AthleteId == athlete) ? $"athlete '{athlete}' is listed as out for the whole week, so he has no sheet. Use another athlete_id, or \"none\"."
                : $"athlete is '{(athlete.Length <= 40 ? athlete : athlete[..40] + "\u2026")}'; no player of the squad has this athlete_id. Use one that athletes.csv writes, or \"none\".");
        return new(context, athlete);
    }

    /// <summary>The week, the club, how many players.</summary>
    public Block Head()
    {
        var (from, to) = (_week.Choice.Monday, _week.Choice.Monday.AddDays(6));
        return Dressed(new ReportHead($"Training week, {Words.ShortDate(from)} to {Words.Date(to)}", _week.Season.Settings.Club,
            $"{Words.PlayersOf(_week.Squad.Players.Count, _week.Season.Athletes.Count(a => a.InLatestSeason))} planned{(_week.Season.Days.Count > 0 ? $", last tested {Words.ShortDate(_week.Season.Days[^1].Date)}" : ", not tested yet")}"));
    }

    /// <summary>Three answers: what the week does, who gets extra work on what, what needs care.</summary>
    public Block Answers() => Dressed(WeekAnswers.Of(_week));

    /// <summary>Where no plan keeps all rules, those that clash; else nothing.</summary>
    public Block Clash() => Dressed(ClashBlock.Of(_week));

    /// <summary>The week at a glance, group by day.</summary>
    public Block Glance() => Dressed(GlanceBlock.Of(_week));

    /// <summary>A sheet for each group and session, one printed page each.</summary>
    public Block Sheets() => Dressed(_week.Answer.Plan is null ? new Together()
        : new Section("Session sheets", "One page each in print: what, in which order, and what every player puts on.", SessionSheet.Of(_week)));

    /// <summary>The sheet of the player asked for; nothing where none is.</summary>
    public Block Player() => Dressed(_athlete == "none" ? new Together() : PlayerSheet.Of(_week, _athlete));

    /// <summary>Who is out, restricted, or needs a test first.</summary>
    public Block WhoNeedsCare() => Dressed(SquadBlock.Of(_week));

    /// <summary>Why each thing is in the week, and what was left out.</summary>
    public Block Why() => Dressed(WhyBlock.Of(_week));

    /// <summary>The dose against its limits.</summary>
    public Block Doses() => Dressed(DosesBlock.Of(_week));

    /// <summary>What the log says of the loads planned before.</summary>
    public Block Log() => Dressed(FeedbackBlock.Of(_week));

    /// <summary>Differences from the earlier plan of the week; nothing where there was none.</summary>
    public Block Changes() => Dressed(_week.Answer.Plan is { Changes.Count: > 0 } plan
        ? new Section("Changed since the plan before", "", new Callout($"{plan.Changes.Count} {(plan.Changes.Count == 1 ? "change" : "changes")}; the rest stays as it was.", plan.Changes)) : new Together());

    /// <summary>The rules with figure, handling and source.</summary>
    public Block Rules() => Dressed(WeekMethods.Rules(_week));

    /// <summary>The cautions that travel with the plan.</summary>
    public Block Cautions() => Dressed(WeekMethods.Cautions(_week));

    /// <summary>What was held back and what would mend it.</summary>
    public Block HeldBack() => HeldBackBlock.Of(_week.Season);

    /// <summary>Methods and sources.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "A member like the others: a notebook asks the report for every part.")]
    public Block Methods() => Dressed(WeekMethods.Methods());

    /// <summary>Files, digests and choices behind the plan.</summary>
    public Block Provenance() => ProvenanceBlock.Of(_week.Season,
        ("Week", $"{Words.Date(_week.Choice.Monday)} to {Words.Date(_week.Choice.Monday.AddDays(6))}"),
        ("Sessions from", _week.Choice.FromCalendar ? "training/calendar.csv" : "the usual week of the phase"),
        ("Training files of the season", _week.Training.OwnFiles.Count == 0 ? "none; the shipped ones" : string.Join(", ", _week.Training.OwnFiles)));

    private static WeekPage Dressed(Block block) => new(block);
}
