using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Motion;
using Analytics.Season.Clips;

namespace Analytics.Season.Sharing;

/// <summary>Settings of a shared season.</summary>
internal static class SharedSettings
{
    /// <summary>The settings without players, and without words of a coach that have no effect any more.</summary>
    public static SeasonSettings Of(SeasonSettings settings, SharedNames names) => settings with
    {
        Club = names.Title(settings.Club),
        Season = names.Title(settings.Season),
        Worthwhile = settings.Worthwhile.Where(w => MetricCatalogue.All.Any(m => m.Id == w.Key)).ToDictionary(StringComparer.Ordinal),
        Video = settings.Video with
        {
            Markers = settings.Video.Markers.Values.Distinct().ToDictionary(MarkerWords.Word, r => r, StringComparer.Ordinal),
            Calibration = settings.Video.Calibration is { } ends ? ends with { From = MarkerWords.Word(MarkerRole.CalibrationFrom), To = MarkerWords.Word(MarkerRole.CalibrationTo) } : null,
        },
    };
}
