using Analytics.Metrics.Contact;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Quantities;
using Analytics.Statistics.Summaries;

namespace Analytics.Notebooks.ContactReview;

/// <summary>What the other player brings: the speed he needs to carry the same, and one collision of middle players as ranges. No player is ranked, and the cautions stand under the figures.</summary>
internal static class OtherPlayerBlock
{
    private static readonly Mass[] InPounds = [Mass.FromPounds(190), Mass.FromPounds(240), Mass.FromPounds(300)];
    private static readonly Mass[] InKilograms = [Mass.FromKilograms(85), Mass.FromKilograms(110), Mass.FromKilograms(135)];

    public static Block Of(ReviewDay day)
    {
        const string Title = "What the other player brings";
        var known = day.Players.Where(p => p.Speed is not null && day.Context.DayOf(p.Athlete.Id)?.BodyMass is not null).ToList();
        if (known.Count == 0) return new Section(Title, "", new Note("It needs a speed at contact and a body mass."));
        var speed = Speed.FromMetresPerSecond(Quantiles.Median([.. known.Select(p => p.Speed!.Value)]));
        var mass = Mass.FromKilograms(Quantiles.Median([.. known.Select(p => day.Context.DayOf(p.Athlete.Id)!.BodyMass!.Value.Kilograms)]));
        CollisionBody middle = new(mass, speed);
        var pounds = day.Season.Settings.MassUnit == "lb";
        return new Section(Title, $"For the middle player on film, {Shown(mass, pounds)} at {Figures.Plain(speed.MetresPerSecond, 1, "m/s")}. Mass counts as much as speed.",
            new Together(Equal(middle, pounds, day.Season.Settings.SpeedUnit), Ranges(middle), new Note("Ranges, since nobody measured the contact itself: how springy it is, and how long it lasts, are assumed.")), new Cautions(CollisionCaution.Standard.Points));
    }

    private static DataTable Equal(CollisionBody middle, bool pounds, string speedUnit) => DataTable.Of("Speed at which another carries the same momentum", pounds ? InPounds : InKilograms, t =>
    {
        t.Text("Other player", m => Shown(m, pounds)).Numeric("Speed needed", "m/s", m => Figures.Plain(Needed(m).MetresPerSecond, 1));
        if (speedUnit != "m/s" && Speed.Units.FirstOrDefault(u => u.Symbol == speedUnit) is { } unit) t.Numeric("Speed needed", unit.Symbol, m => Figures.Plain(Needed(m).MetresPerSecond / unit.ToSi, 1));

        Speed Needed(Mass mass) => EqualMomentum.Of(mass, middle).SpeedNeeded;
    });

    private static DataTable Ranges(CollisionBody middle)
    {
        (string Case, LineCollision Collision)[] cases =
        [
            ("into a player of the same mass who stands", LineCollision.Of(middle, new(middle.Mass, Speed.Zero))),
            ("into one who comes as fast", LineCollision.Of(middle, new(middle.Mass, -middle.Speed))),
        ];
        return DataTable.Of("Rough ranges of a straight contact", cases, t => t
            .Text("Contact", c => c.Case)
            .Numeric("Closing speed", "m/s", c => Range(c.Collision.Impact.ClosingSpeed, 1, 1))
            .Numeric("Impulse on each", "N\u00b7s", c => Range(c.Collision.Impact.Impulse, 1, 0))
            .Numeric("Mean force", "kN", c => Range(c.Collision.Impact.MeanForce, 0.001, 1))
            .Numeric("Peak force", "kN", c => Range(c.Collision.Impact.PeakForce, 0.001, 1))
            .Numeric("Energy lost", "J", c => Range(c.Collision.Impact.EnergyLost, 1, 0))
            .Numeric("Own speed afterwards", "m/s", c => Range(c.Collision.FirstAfter, 1, 1)));
    }

    private static Cell Range<T>(QuantityRange<T> range, double factor, int decimals) where T : struct, IQuantity<T>
    {
        string low = Figures.Plain(range.Low.Si * factor, decimals), high = Figures.Plain(range.High.Si * factor, decimals);
        return low == high ? low : $"{low} to {high}";
    }

    // The unit the coach uses first.
    private static string Shown(Mass mass, bool pounds)
    {
        string lb = Figures.Plain(mass.Pounds, 0, "lb"), kg = Figures.Plain(mass.Kilograms, 0, "kg");
        return pounds ? $"{lb} ({kg})" : $"{kg} ({lb})";
    }
}
