using System.Globalization;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>How places are named in messages.</summary>
internal static class PlaceTexts
{
    public static string Day(DateOnly date) => date.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    public static string Session(SessionSlot slot)
        => slot.Start is { } start ? string.Create(CultureInfo.InvariantCulture, $"{Day(slot.Date)}, {start:HH\\:mm}") : Day(slot.Date);
}
