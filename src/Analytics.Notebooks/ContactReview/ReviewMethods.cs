using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.ContactReview;

/// <summary>How the numbers of the review came about, and what is not in their errors.</summary>
internal static class ReviewMethods
{
    public static Block Of(ReviewDay day) => new Section("How the numbers came about", "", new Folded("Methods and doubts",
        new Definitions(
            ("Time to contact", "Frames from the first movement to the first touch, each event taken half a frame before it is first seen. Its error is that of the frames (1/(f\u221A6) s at f frames a second), of judging the events, and of rows not noted."),
            ("Judgement", $"First movement {day.Judgement.FirstMovement}, contact {day.Judgement.Contact}."),
            ("A player's mean", "How far a player's repetitions lie apart is pooled over the squad; a mean of n repetitions has that spread over \u221An in its error."),
            ("The window", string.Create(CultureInfo.InvariantCulture, $"{day.Window} from first movement to contact (0.40 to 0.45 s is common practice, no source). Chances are those of Student's t about the mean; a place is named from {100 * WindowChances.Sure:0} % on (our choice).")),
            ("Posture and speed at contact", "A cubic through the digitised points of the 0.1 s (speed 0.15 s) before the touch; nothing after the touch counts. Errors hold the clicks, the doubt of the moment times the rate of change, for speed the scale and the part of the body not seen. [winter2009] [deleva1996]"),
            ("Trunk change", "Trunk lean 0.15 s after the touch less that at the touch, forward positive."),
            ("Curves and pictures", "Gaps up to 0.05 s filled, dual-pass Butterworth filter, cut-off by residual analysis [winter2009]. Figures do not come from these curves."),
            ("By split times", "Mono-exponential sprint from rest fitted to the player's own splits; errors by derivatives. [keller1973]"),
            ("Collision ranges", "Two rigid bodies, restitution 0 to 0.3, contact of 0.1 to 0.4 s (common practice, no source); peak \u03C0/2 to 2 times the mean."),
            ("Not in the errors", "A camera that is not square to the run, movement out of the plane, a player off the plane of the stick that the season does not know of (1 m at 12 m makes every speed 9\u2009% too high), markers that are not the joint centres, a reader who is always late."),
            ("How often intervals hold", "In made-up clips with known truth the 95\u2009% intervals of time, shin lean, speed and momentum held the truth in 93 to 97\u2009% at 60, 120 and 240 frames a second with all landmarks clicked; see the project's clip study for every case, those outside too."))));
}
