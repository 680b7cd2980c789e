using Analytics.Metrics.Trials;

namespace Analytics.Season.Cells;

/// <summary>Words of the season files and what they mean.</summary>
internal static class Words
{
    public static readonly WordSet<TimingMethod> Timing = new("timing",
        ("electronic", TimingMethod.Electronic), ("hand", TimingMethod.Hand), ("video", TimingMethod.Video));

    public static readonly WordSet<StartType> Start = new("start",
        ("standing_beam", StartType.StandingBeam), ("three_point_hand", StartType.ThreePointHand),
        ("first_movement", StartType.FirstMovement), ("signal", StartType.Signal));

    public static readonly WordSet<JumpKind> Jump = new("jump",
        ("countermovement", JumpKind.Countermovement), ("squat", JumpKind.Squat), ("drop", JumpKind.Drop),
        ("hurdle", JumpKind.Hurdle), ("standing_long", JumpKind.StandingLong));

    public static readonly WordSet<JumpMethod> Method = new("method",
        ("mat", JumpMethod.Mat), ("force_plate", JumpMethod.ForcePlate), ("reach", JumpMethod.Reach),
        ("video", JumpMethod.Video), ("tape", JumpMethod.Tape));

    public static readonly WordSet<Side> Sides = new("side", ("left", Side.Left), ("right", Side.Right));

    public static readonly WordSet<bool> YesNo = new("answer", ("yes", true), ("no", false));

    public static readonly WordSet<AbsenceStatus> Status = new("status",
        ("injured", AbsenceStatus.Injured), ("ill", AbsenceStatus.Ill), ("absent", AbsenceStatus.Absent), ("limited", AbsenceStatus.Limited));

    /// <summary>Lower case, with one underscore for spaces, hyphens, slashes and brackets: "Load (LB)" is "load_lb".</summary>
    public static string Normal(string text)
    {
        Span<char> buffer = text.Length <= 128 ? stackalloc char[text.Length] : new char[text.Length];
        var length = 0;
        foreach (var c in text)
        {
            if (char.IsWhiteSpace(c) || c is '_' or '-' or '/' or '(' or ')' or '[' or ']' or '\uFEFF')
            {
                if (length > 0 && buffer[length - 1] != '_') buffer[length++] = '_';
            }
            else
            {
                buffer[length++] = char.ToLowerInvariant(c);
            }
        }

        if (length > 0 && buffer[length - 1] == '_') length--;
        return new string(buffer[..length]);
    }
}

/// <summary>Why an athlete was not fully available.</summary>
internal enum AbsenceStatus
{
    Injured,
    Ill,
    Absent,
    Limited,
}
