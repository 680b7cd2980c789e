namespace Analytics.Planning.Rules;

/// <summary>Identifiers of the rules, as written in <c>rules.csv</c>.</summary>
public static class RuleIds
{
    /// <summary>Per cent of 1RM from which a set counts as heavy.</summary>
    public const string HeavyPercent = "heavy_percent";

    /// <summary>Hours between two sessions with heavy lower-body work.</summary>
    public const string HeavyLowerGap = "heavy_lower_gap";

    /// <summary>Hours before and after a game without heavy work.</summary>
    public const string GameGap = "game_gap";

    /// <summary>Hours between two sessions with jumps of high impact.</summary>
    public const string HighImpactGap = "high_impact_gap";

    /// <summary>Repetitions of a weightlifting movement in a session, by zone of intensity.</summary>
    public const string ZoneRepetitions = "zone_repetitions";

    /// <summary>Ground contacts of a session, by experience; the figure is per cent of the guide.</summary>
    public const string JumpContacts = "jump_contacts";

    /// <summary>Body mass above which the heavy player's share of contacts holds.</summary>
    public const string HeavyPlayer = "heavy_player_mass";

    /// <summary>Share of the contacts a heavy player does.</summary>
    public const string HeavyPlayerContacts = "heavy_player_contacts";

    /// <summary>Hard sets of one pattern in a week.</summary>
    public const string HardSets = "hard_sets";

    /// <summary>Minutes of the session.</summary>
    public const string SessionMinutes = "session_minutes";

    /// <summary>Minutes of warm-up inside the session.</summary>
    public const string WarmUpMinutes = "warm_up_minutes";

    /// <summary>Minutes to change from one exercise to the next.</summary>
    public const string ChangeMinutes = "change_minutes";

    /// <summary>Players who share one place of a station.</summary>
    public const string PlayersPerPlace = "players_per_place";

    /// <summary>Places of a station.</summary>
    public const string StationPlaces = "station_places";

    /// <summary>What a day kind asks for.</summary>
    public const string DayDemands = "day_demands";

    /// <summary>What a player may not do, as listed.</summary>
    public const string Restrictions = "restrictions";

    /// <summary>What an exercise asks of a player.</summary>
    public const string Prerequisites = "prerequisites";

    /// <summary>Choices of the coach that stay.</summary>
    public const string Kept = "kept_choices";

    /// <summary>Times one exercise may come in a week.</summary>
    public const string ExerciseTimes = "exercise_times";

    /// <summary>Exercises of one pattern in a session.</summary>
    public const string PatternTimes = "pattern_times";

    /// <summary>Jumps and sprints, then power, then strength, then the rest.</summary>
    public const string SessionOrder = "session_order";

    /// <summary>Probability from which a quality counts as a need.</summary>
    public const string NeedProbability = "need_probability";

    /// <summary>Days after which a test counts as old.</summary>
    public const string TestOldAfter = "test_old_after";

    /// <summary>Days after which a test says nothing.</summary>
    public const string TestExpiresAfter = "test_expires_after";

    /// <summary>Per cent more load after readings that allow it.</summary>
    public const string ProgressStep = "progress_step";

    /// <summary>Per cent less load after readings that fell short.</summary>
    public const string BackOffStep = "back_off_step";

    /// <summary>Session rating above which no load goes up.</summary>
    public const string ProgressRating = "progress_rating";

    /// <summary>Logged readings of an exercise that must agree before its load moves.</summary>
    public const string ReadingsNeeded = "readings_needed";

    /// <summary>Days a reading counts.</summary>
    public const string FeedbackDays = "feedback_days";
}
