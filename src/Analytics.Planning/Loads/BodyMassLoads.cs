using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Rooms;
using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>Loads that are a share of body mass: the middle of the exercise's range (our choice, no source).</summary>
internal static class BodyMassLoads
{
    public static Prescription Of(PlanPlayer player, Exercise exercise, int sets, WeightStock stock)
    {
        if ((exercise.LeastPercent ?? exercise.MostPercent) is not { } low) return new() { Instead = "the coach chooses: no share of body mass is listed" };
        var percent = (low + (exercise.MostPercent ?? low)) / 2;
        if (percent <= 0) return new();
        if (player.BodyMass is not { } mass) return new() { Instead = "weigh first: no body mass known" };
        var wanted = mass * (percent / 100);
        var text = $"{LoadWords.Percent(percent)} of body mass is {LoadWords.Of(wanted, stock.Unit)}";
        if (exercise.Implement is not { } implement) return new() { Instead = $"the exercise names nothing to load; {text}" };
        var weights = LoadableWeights.Of(stock, implement);
        if (weights.Problem is { } problem) return new() { Instead = $"{problem}; {text}" };
        if (weights.Down(wanted) is not { } load) return new() { Instead = LoadWords.TooHeavy(implement, weights.All[0], stock.Unit) };
        return new() { Working = [.. Enumerable.Repeat(load, sets)], Notes = implement == "dumbbell" ? ["load of one hand"] : [] };
    }
}
