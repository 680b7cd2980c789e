using System.Diagnostics.CodeAnalysis;
using Analytics.Notebooks.Blocks;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>
/// One page for one player, block by block: where you stand, what changed for real, what to work on, what to lift next.
/// Each member is the output of one notebook cell. Of other players it shows group figures only; see docs/athlete-page.md.
/// </summary>
/// <example>
/// <code>
/// var season = SeasonShelf.Open("../data-demo");
/// var page = AthletePageReport.Open(season, athlete: "TC12", barStep: 5);
/// page.NextLoads();
/// </code>
/// </example>
public sealed class AthletePageReport
{
    private readonly PlayerPage _page;

    private AthletePageReport(PlayerPage page) => _page = page;

    /// <summary>Makes the page of one player. What the squad shares is worked out once for a season, so many pages cost little.</summary>
    /// <param name="season">The season.</param>
    /// <param name="athlete">An <c>athlete_id</c>, or <c>first</c> for the first of the list with a result.</param>
    /// <param name="day">Testing day as <c>yyyy-mm-dd</c>, or <c>latest</c>. A test the player missed that day is taken from his latest day before it.</param>
    /// <param name="since">What to compare with: <c>first</c>, <c>previous</c>, <c>none</c> or a testing day.</param>
    /// <param name="barStep">Smallest step a bar can be loaded by, in the season's mass unit (lb or kg), above 0 and at most 50.</param>
    /// <exception cref="SeasonException">There is no such player or day, or the step makes no sense; the message says what to do and names no player.</exception>
    public static AthletePageReport Open(SeasonData season, string athlete = "first", string day = "latest", string since = "first", double barStep = 5)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(athlete);
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(since);
        return new(PlayerPage.Of(season, new PageChoice(athlete, day, since, barStep)));
    }

    /// <summary>Name, club, position, and which days are compared.</summary>
    public Block Head() => Dressed(HeadBlock.Of(_page));

    /// <summary>Three answers: what changed for real, what to work on next and why, what to lift next.</summary>
    public Block Answers() => Dressed(new Answers(ChangeAnswer.Of(_page), WorkOnAnswer.Of(_page), LiftAnswer.Of(_page)));

    /// <summary>Where you stand against the middle of your group.</summary>
    public Block WhereYouStand() => Dressed(StandingStrips.Of(_page));

    /// <summary>Your change over the season, test by test.</summary>
    public Block YourChange() => Dressed(SeasonLines.Of(_page));

    /// <summary>What to put on the bar next, from your latest tests.</summary>
    public Block NextLoads() => Dressed(LoadsBlock.Of(_page));

    /// <summary>The cautions that go with the loads.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "A member like the others: a notebook asks the page for every part.")]
    public Block BeforeYouLift() => Dressed(LiftCautions.Block);

    /// <summary>How to read the page, and the methods folded away.</summary>
    public Block HowToRead() => Dressed(ReadingBlock.Of(_page));

    /// <summary>Your own rows that were held back, and what would mend them; empty when there are none.</summary>
    public Block LeftOut() => Dressed(OwnRows.Of(_page));

    /// <summary>From which files, under which choices; no file named after another player is listed.</summary>
    public Block Provenance() => Dressed(PageProvenance.Of(_page));

    private static PageBlock Dressed(ReportBlock block) => new(block);
}
