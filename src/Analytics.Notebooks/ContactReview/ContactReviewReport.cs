using Analytics.Metrics.Contact;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.ContactReview;

/// <summary>The review of filmed contact repetitions, block by block. Each member is the output of one notebook cell; for a season without clips the head and the answers say what to film, the rest is empty.</summary>
public sealed class ContactReviewReport
{
    private readonly SeasonData season;
    private readonly ReviewDay? review;

    private ContactReviewReport(SeasonData season, ReviewDay? review) => (this.season, this.review) = (season, review);

    /// <summary>Reads a season and picks the day.</summary>
    /// <param name="season">Season folder.</param>
    /// <param name="day">Testing day with clips as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <exception cref="SeasonException">The season cannot be used, or that day has no clip; the message says what to do.</exception>
    public static ContactReviewReport Open(string season, string day = "latest") => Of(SeasonReader.Read(season), day);

    /// <summary>The review of a season that was read before.</summary>
    /// <param name="season">The season.</param>
    /// <param name="day">Testing day with clips as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <exception cref="SeasonException">That day has no clip; the message lists those that have.</exception>
    public static ContactReviewReport Of(SeasonData season, string day = "latest")
    {
        ArgumentNullException.ThrowIfNull(season);
        return new(season, ReviewDay.Of(season, day));
    }

    /// <summary>Title, club, who and when.</summary>
    public Block Head() => review is null
        ? new ReportHead("Contact review", season.Settings.Club, "no repetition on film yet")
        : new ReportHead($"Contact review, {Words.Date(review.Date)}", season.Settings.Club,
            $"{Words.Players(review.Players.Count)}, {review.Repetitions.Count()} repetitions on film");

    /// <summary>The three answers a head coach needs.</summary>
    public Block Answers() => review is null ? ReviewAnswers.NothingFilmed() : ReviewAnswers.Of(review);

    /// <summary>Time to contact of every player against the window.</summary>
    public Block TimesAgainstWindow() => With(TimesBlock.Of);

    /// <summary>Events of every repetition on one time line.</summary>
    public Block TimeLines() => With(TimesBlock.Lines);

    /// <summary>Postures at first movement, mid-way and contact, one repetition a player.</summary>
    public Block Postures() => With(PostureBlock.Figures);

    /// <summary>Shin and trunk lean through the same repetitions, with their bands.</summary>
    public Block AngleCurves() => With(PostureBlock.Curves);

    /// <summary>Momentum at contact by position group.</summary>
    public Block WhatPlayersCarry() => With(CarryBlock.Of);

    /// <summary>What a kilogram, a tenth of a m/s or a tenth of a second would change, from the player's own split times.</summary>
    public Block WhatWouldChangeIt() => With(ChangeItBlock.Of);

    /// <summary>What the other player brings: ranges, with the cautions of collisions.</summary>
    public Block TheOtherPlayer() => With(OtherPlayerBlock.Of);

    /// <summary>All figures of every player.</summary>
    public Block PlayerTable() => With(ReviewTable.Of);

    /// <summary>What to film better next time.</summary>
    public Block FilmBetter() => With(FilmBetterBlock.Of);

    /// <summary>What was held back and what would mend it.</summary>
    public Block HeldBack() => With(r => HeldBackBlock.Of(r.Context));

    /// <summary>Methods and doubts.</summary>
    public Block Methods() => With(ReviewMethods.Of);

    /// <summary>The cautions that travel with the review.</summary>
    public Block Cautions() => review is null ? new Together() : new Cautions(CollisionCaution.Standard.Points.Select(p => p.StartsWith("Caution: ", StringComparison.Ordinal) ? Words.Capital(p[9..]) : p)
        .Append("A time, an angle or a momentum describes one drill on one day; it is no medical finding and predicts no injury."));

    /// <summary>Files, digests and choices behind the review.</summary>
    public Block Provenance() => With(r => ProvenanceBlock.Of(r.Context));

    private Block With(Func<ReviewDay, Block> block) => review is null ? new Together() : block(review);
}
