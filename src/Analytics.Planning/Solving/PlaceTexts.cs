using System.Globalization;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>How places are named in messages.</summary>
internal static class PlaceTexts
{
    public static string Day(DateOnly date) => date.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    public static string Session(SessionSlot slot) => Session(slot.Date, slot.Start);

    public static string Session(DateOnly date, TimeOnly? start)
        => start is { } time ? string.Create(CultureInfo.InvariantCulture, $"{Day(date)}, {time:HH\\:mm}") : Day(date);
}
