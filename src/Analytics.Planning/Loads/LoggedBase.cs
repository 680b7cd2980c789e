namespace Analytics.Planning.Loads;

/// <summary>Where the log has put the loads of one exercise of one player.</summary>
/// <param name="Kilograms">1RM of the exercise that per cent are of, kg, in the place of that of the test.</param>
/// <param name="LoggedOn">Day of the latest session behind it. A test of that day or later speaks instead.</param>
/// <param name="Text">What the log did to the load, in words.</param>
public sealed record LoggedBase(double Kilograms, DateOnly LoggedOn, string Text);
