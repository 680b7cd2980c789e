using Analytics.Metrics.Contact;
using Analytics.Metrics.Trials;

namespace Analytics.Season.Intake;

/// <summary>Puts other identifiers into a trial.</summary>
internal static class TrialPeople
{
    /// <summary>The same trial of an athlete of another identifier, and of another opponent on film.</summary>
    public static Trial With(Trial trial, Func<string, string> idOf)
    {
        var id = idOf(trial.AthleteId);
        if (trial is ContactTrial { Against.AthleteId: { } other } contact && idOf(other) is var opponent && opponent != other) trial = contact with { Against = ContactParty.Athlete(opponent) };
        return id == trial.AthleteId ? trial : trial with { AthleteId = id };
    }
}
