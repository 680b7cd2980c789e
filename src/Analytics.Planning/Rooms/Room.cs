namespace Analytics.Planning.Rooms;

/// <summary>A room and what stands in it.</summary>
/// <param name="Id">Name as in the calendar. Untrusted text: always escape.</param>
/// <param name="Stations">Places by station: <c>rack</c> 8, <c>platform</c> 6; a station that is not listed is not there.</param>
public sealed record Room(string Id, IReadOnlyDictionary<string, int> Stations)
{
    /// <summary>Places of a station; 0 when it is not there.</summary>
    /// <param name="station">Station.</param>
    public int Places(string station) => Stations.GetValueOrDefault(station);
}
