using Analytics.Statistics.Results;

namespace Analytics.Metrics.Load;

/// <summary>Ground contacts of jumps of one athlete over a week, Monday to Sunday.</summary>
/// <param name="Monday">First day of the week.</param>
/// <param name="Known">Contacts counted: the total, or a lower bound of it when <paramref name="Uncounted"/> is above 0.</param>
/// <param name="Sessions">Sessions of the week.</param>
/// <param name="Uncounted">Of these, sessions for which nobody wrote a count; a session without jumps has the count 0.</param>
/// <param name="Most">Most contacts counted in one session.</param>
public sealed record WeekContacts(DateOnly Monday, int Known, int Sessions, int Uncounted, int Most) : Result
{
    /// <summary>Contacts of the week; null when a session was not counted.</summary>
    public int? Total => Uncounted == 0 ? Known : null;

    /// <summary>The week that holds a day.</summary>
    /// <param name="day">Any day of the week.</param>
    /// <param name="sessions">Sessions of one athlete; those of other weeks are not counted.</param>
    public static WeekContacts Of(DateOnly day, IEnumerable<SessionWork> sessions)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        var monday = WeekLoad.MondayOf(day);
        var inWeek = sessions.Where(s => s.Date >= monday && s.Date < monday.AddDays(7)).ToList();
        return new(monday, inWeek.Sum(s => s.JumpContacts ?? 0), inWeek.Count, inWeek.Count(s => s.JumpContacts is null), inWeek.Max(s => s.JumpContacts) ?? 0);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        FormattableString.Invariant($"Jump contacts, week of {Monday:yyyy-MM-dd}"), "sum of the counts written down",
        [new("contacts", Known) { Note = Uncounted > 0 ? $"at least; {Uncounted} of {Sessions} sessions without a count" : string.Empty }, new("most in a session", Most)])
    { Basis = $"{Sessions} {(Sessions == 1 ? "session" : "sessions")}, no error known" };
}
