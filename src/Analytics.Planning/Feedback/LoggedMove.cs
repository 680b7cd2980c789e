using Analytics.Planning.Loads;

namespace Analytics.Planning.Feedback;

/// <summary>What the log does to the loads of one exercise of one player.</summary>
/// <param name="Feedback">What the log says.</param>
/// <param name="Base">Where it puts the 1RM behind the loads; null where they stay with the test, or there is none.</param>
/// <param name="Text">What that means for the load, in words.</param>
public sealed record LoggedMove(ExerciseFeedback Feedback, LoggedBase? Base, string Text);
