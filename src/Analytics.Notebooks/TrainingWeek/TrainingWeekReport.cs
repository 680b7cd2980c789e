using Analytics.Notebooks.Blocks;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>
/// A training week, block by block: from the latest tests, the calendar, the rooms and the restrictions to a sheet for each group and session with every player's
/// loads. Each member is the output of one notebook cell; see docs/training-week.md.
/// </summary>
/// <example>
/// <code>
/// var season = SeasonShelf.Open("../data-demo");
/// var week = TrainingWeekReport.Open(season, week: "next");
/// week.Sheets();
/// </code>
/// </example>
public sealed class TrainingWeekReport
{
    private readonly WeekView _view;

    private TrainingWeekReport(WeekView view) => _view = view;

    /// <summary>Plans a week. One plan is made for a season and a week, so the pages of many players cost little.</summary>
    /// <param name="season">The season.</param>
    /// <param name="week"><c>next</c>, the first week with a session after that of the latest testing day, or any day of the week as <c>yyyy-mm-dd</c>.</param>
    /// <param name="phase"><c>auto</c>, or <c>off_season</c>, <c>pre_season</c>, <c>in_season</c>: whose usual week is taken where the calendar has none.</param>
    /// <param name="athlete"><c>all</c> for the squad, or an <c>athlete_id</c> for the sheet of one player, without a value of anybody else.</param>
    /// <exception cref="SeasonException">A setting cannot be used, or nobody trains; the message says what to do.</exception>
    public static TrainingWeekReport Open(SeasonData season, string week = WeekChoice.Next, string phase = WeekChoice.Auto, string athlete = WeekView.All)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(week);
        ArgumentNullException.ThrowIfNull(phase);
        ArgumentNullException.ThrowIfNull(athlete);
        return new(WeekView.Of(WeekContext.Of(season, week, phase), athlete));
    }

    /// <summary>Which week, for whom, and loudly when no plan keeps every rule.</summary>
    public Block Head() => Dressed(WeekHead.Of(_view));

    /// <summary>Three answers: what the week does, who gets extra work and why, what needs care.</summary>
    public Block Answers() => Dressed(WeekAnswers.Of(_view));

    /// <summary>Where there is no plan: the rules that clash and what giving way on each would do; else empty.</summary>
    public Block Clashes() => Dressed(ClashBlock.Of(_view));

    /// <summary>Groups by days.</summary>
    public Block WeekAtAGlance() => Dressed(GlanceBlock.Of(_view));

    /// <summary>One printed sheet for each group and session, or the sheet of the player; where there is no plan, loads for a session by hand.</summary>
    public Block Sheets() => Dressed(SheetsBlock.Of(_view));

    /// <summary>Who gets extra work and why; each exercise with what it serves; what was left out.</summary>
    public Block Why() => Dressed(WhyBlock.Of(_view));

    /// <summary>The dose against published limits.</summary>
    public Block Doses() => Dressed(DosesBlock.Of(_view));

    /// <summary>What the log says about the next loads; empty where no earlier plan was kept.</summary>
    public Block Feedback() => Dressed(FeedbackBlock.Of(_view));

    /// <summary>Flags, changes since the earlier plan, how good the plan is, and all rules folded away.</summary>
    public Block Rules() => Dressed(RulesBlock.Of(_view));

    /// <summary>The cautions that go with the week.</summary>
    public Block Cautions() => Dressed(WeekCautions.Of(_view));

    /// <summary>How the week came about, folded away.</summary>
    public Block Methods() => Dressed(WeekMethods.Of(_view));

    /// <summary>Rows of the folder training that were held back; on the page of a player his own rows.</summary>
    public Block HeldBack() => Dressed(WeekRows.HeldBack(_view));

    /// <summary>From which files, under which choices.</summary>
    public Block Provenance() => Dressed(WeekRows.Provenance(_view));

    /// <summary>The plan as a file to be put into the season as training/plan.csv; on the page of a player, or without a plan, empty.</summary>
    public Block PlanFile() => _view.Only is null && _view.Plan is not null ? new PlanFileBlock(Spreadsheet(), PlanSheet.Kept(_view.Week), "plan.csv") : Dressed(new Together());

    /// <summary>The text of that file, of the whole squad.</summary>
    public string Spreadsheet() => PlanSheet.Of(_view.Week);

    private static WeekBlock Dressed(ReportBlock block) => new(block);
}
