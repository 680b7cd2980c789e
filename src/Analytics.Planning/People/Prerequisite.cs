using System.Globalization;
using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;

namespace Analytics.Planning.People;

/// <summary>What an exercise asks of a player.</summary>
public static class Prerequisite
{
    /// <summary>What a player lacks for an exercise, in words; null when nothing. What is not known of him counts as lacking, but for his body mass where only a greatest one is asked.</summary>
    /// <param name="player">The player.</param>
    /// <param name="exercise">The exercise.</param>
    public static string? Lacks(PlanPlayer player, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(exercise);
        if (exercise.LeastSquatRatio is { } ratio)
        {
            if (player.BodyMass is not { Kilograms: > 0 } mass || !player.Maxima.TryGetValue(Lifts.BackSquat, out var squat)) return "back squat or body mass not tested";
            if (squat.Kilograms / mass.Kilograms < ratio) return string.Create(CultureInfo.InvariantCulture, $"squats {squat.Kilograms / mass.Kilograms:0.00} times his body mass, {ratio:0.##} asked");
        }

        if (exercise.MostBodyMass is { } most && player.BodyMass is { } own && own > most) return "heavier than the exercise is meant for";
        if (exercise.LeastTrainingYears is { } years && !(player.TrainingYears >= years))
            return string.Create(CultureInfo.InvariantCulture, $"{years:0.#} years of training asked{(player.TrainingYears is { } has ? string.Create(CultureInfo.InvariantCulture, $", he has {has:0.#}") : ", his are not known")}");
        return null;
    }
}
