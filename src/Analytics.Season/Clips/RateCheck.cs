using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Checks;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Trials;

namespace Analytics.Season.Clips;

/// <summary>
/// Rates typed wrongly, such as 30 for a clip recorded at 240 Hz and played slowly. Only clips whose times come from a rate can have one. The limits are common practice, no source.
/// </summary>
internal static class RateCheck
{
    /// <summary>Fewest repetitions of others that a time is compared with.</summary>
    public const int FewestOthers = 5;

    private const double LeastAcceleration = 1, MostAcceleration = 20, EasyAcceleration = 1, HardAcceleration = 12;
    private const double FarTimes = 1.7, NearTimes = 1.35;

    /// <summary>A rate that the way of the body contradicts: twice the way over the time squared is the mean acceleration from a standing start.</summary>
    /// <param name="metres">Way between the events, m.</param>
    /// <param name="seconds">Time between them at the rate typed, s.</param>
    /// <param name="hertz">The rate typed, Hz.</param>
    /// <param name="usual">The usual rate of the season, Hz; named first where it fits. Null when there is none.</param>
    public static CellFault? Points(double metres, double seconds, double hertz, double? usual)
    {
        var acceleration = 2 * metres / (seconds * seconds);
        if (acceleration is >= LeastAcceleration and <= MostAcceleration) return null;
        // With another rate the time is shorter by rate over rate typed, so the acceleration grows by its square.
        double? Misfit(double rate) => acceleration * rate / hertz * (rate / hertz) is var a and >= EasyAcceleration and <= HardAcceleration ? Math.Abs(Math.Log(a / 5)) : null;
        var meant = usual is { } season && Misfit(season) is not null ? season : Meant(hertz, Misfit);
        return meant is not { } rate ? null : Fault(hertz, rate, string.Create(CultureInfo.InvariantCulture, $"the player covers {metres:0.00} m from first movement to contact in {seconds:0.000} s at {CellText.Number(hertz)} Hz, {acceleration:0.##} m/s² from a standing start; allowed {LeastAcceleration} to {MostAcceleration} m/s²"));
    }

    /// <summary>Holds back repetitions whose time no other repetition over the same gap comes near, where another usual rate explains it.</summary>
    public static void HoldBack(IReadOnlyCollection<CandidateDay> days)
    {
        var all = days.SelectMany(d => d.Candidates).Select(c => c.Trial).OfType<ContactTrial>().Where(t => t.Clock.FrameCount is null).Select(t => new Timed(t)).ToList();
        if (all.Count <= FewestOthers) return;
        foreach (var day in days)
            day.HoldBackWhere(c => c is { IsChecked: false, Trial: ContactTrial trial } && trial.Clock.FrameCount is null ? Squad(new Timed(trial), all) : null);
    }

    private static CellFault? Squad(Timed one, List<Timed> all)
    {
        var alike = all.Where(o => one.IsAlike(o)).ToList();
        var others = alike.Where(o => Math.Abs(o.Hertz - one.Hertz) > 0.02 * one.Hertz).ToList();
        // Where the rates differ, the rarer one is doubted.
        if (others.Count < Math.Max(FewestOthers, alike.Count - others.Count + 1)) return null;
        var middle = Middle.Of(others.Select(o => o.Seconds));
        if (Math.Abs(Math.Log(one.Seconds / middle)) < Math.Log(FarTimes)) return null;
        var meant = Meant(one.Hertz, rate => Math.Abs(Math.Log(one.Seconds * one.Hertz / rate / middle)) is var off && off < Math.Log(NearTimes) ? off : null);
        return meant is not { } hertz ? null : Fault(one.Hertz, hertz, string.Create(CultureInfo.InvariantCulture, $"the time to contact of {one.Seconds:0.000} s at {CellText.Number(one.Hertz)} Hz is {one.Seconds / middle:0.0#} times the middle of {others.Count} other repetitions{(one.Gap is null ? " of the day" : " over the same gap")}, {middle:0.000} s"));
    }

    private static CellFault Fault(double typed, double meant, string what)
        => new(ContactTable.Rate.Name, CellText.Number(typed), $"{what}; the rate looks like {CellText.Number(meant)} Hz", $"Write the rate at which the clip was recorded, not the one it plays at: {CellText.Number(meant)} if that is it. If {CellText.Number(typed)} is right, write yes in a column 'checked'.");

    /// <summary>The usual rate that fits best; null when none does.</summary>
    private static double? Meant(double typed, Func<double, double?> misfit)
        => RateLimits.Usual.Where(r => Math.Abs(r - typed) > 0.02 * typed).Select(r => (Rate: r, Off: misfit(r))).Where(r => r.Off is not null).OrderBy(r => r.Off).Select(r => (double?)r.Rate).FirstOrDefault();

    /// <summary>A repetition timed by a rate.</summary>
    private sealed class Timed(ContactTrial trial)
    {
        public double Hertz { get; } = trial.Clock.Rate.Hertz;

        public double Seconds { get; } = Middle.Of(trial.Readings.Select(r => trial.Clock.Between(r.FirstMovement.Frame, r.Contact.Frame).Seconds));

        public double? Gap { get; } = trial.Gap?.Metres;

        private ContactTrial Trial { get; } = trial;

        /// <summary>Whether another repetition ought to take about as long: the gap is the same to a fifth or, where none was measured, the day is.</summary>
        public bool IsAlike(Timed other)
            => !ReferenceEquals(Trial, other.Trial) && (Gap is { } gap ? other.Gap is { } there && Math.Abs(gap - there) <= 0.2 * gap : other.Gap is null && Trial.Date == other.Trial.Date);
    }
}
