using Analytics.Metrics.Trials;

namespace Analytics.Season;

/// <summary>Choices of a season, from season.json.</summary>
public sealed record SeasonSettings
{
    /// <summary>Club name. Untrusted text: always escape.</summary>
    public required string Club { get; init; }

    /// <summary>Season name. Untrusted text: always escape.</summary>
    public required string Season { get; init; }

    /// <summary>First day of the season.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day of the season.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Unit reports use for loads and body mass: <c>lb</c> or <c>kg</c>.</summary>
    public string MassUnit { get; init; } = "lb";

    /// <summary>Unit reports use for jump heights: <c>in</c> or <c>cm</c>.</summary>
    public string JumpUnit { get; init; } = "in";

    /// <summary>Unit reports use for running speed: <c>mph</c>, <c>m/s</c>, <c>km/h</c>, <c>yd/s</c>.</summary>
    public string SpeedUnit { get; init; } = "mph";

    /// <summary>Timing of a run whose row names none; null when the season sets no default.</summary>
    public TimingMethod? DefaultTiming { get; init; }

    /// <summary>Start of a sprint whose row names none; null when the season sets no default.</summary>
    public StartType? DefaultStart { get; init; }

    /// <summary>Method of a vertical jump whose row names none; null when the season sets no default.</summary>
    public JumpMethod? DefaultJumpMethod { get; init; }

    /// <summary>Pairs of testing days close enough that no true change is expected; they give the typical error.</summary>
    public IReadOnlyList<RetestPair> Retests { get; init; } = [];

    /// <summary>Smallest worthwhile change as a share of the between-athlete SD.</summary>
    public double WorthwhileShare { get; init; } = 0.2;

    /// <summary>Smallest worthwhile change per metric in the metric's catalogue unit, where the coach set one.</summary>
    public IReadOnlyDictionary<string, double> Worthwhile { get; init; } = new Dictionary<string, double>();

    /// <summary>Minutes of one station per athlete that a test takes, by metric, where the coach set them; else usual figures are used.</summary>
    public IReadOnlyDictionary<string, double> TestMinutes { get; init; } = new Dictionary<string, double>();

    /// <summary>How clips were filmed and digitised.</summary>
    public VideoSettings Video { get; init; } = new();
}

/// <summary>Two testing days that form a retest.</summary>
/// <param name="First">First day.</param>
/// <param name="Second">Second day.</param>
public sealed record RetestPair(DateOnly First, DateOnly Second);
