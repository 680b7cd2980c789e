using System.Globalization;
using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Rules;

namespace Analytics.Planning.People;

/// <summary>What an exercise asks of a player.</summary>
public static class Prerequisite
{
    /// <summary>What a player lacks for an exercise, in words; null when nothing. What is not known of him counts as lacking; a squat as <see cref="LoadBase"/> takes it: the lower side
    /// where it is doubtful or old, nothing where it is too old or he was hurt since.</summary>
    /// <param name="player">The player.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="day">Day of the session.</param>
    public static string? Lacks(PlanPlayer player, Exercise exercise, PlanRules rules, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(exercise);
        if (exercise.LeastSquatRatio is { } ratio)
        {
            if (player.BodyMass is not { Kilograms: > 0 } mass || !player.Maxima.TryGetValue(Lifts.BackSquat, out var tested)) return "back squat or body mass not tested";
            var squat = LoadBase.Of(tested, day, rules);
            if (squat.Gap is { } gap) return gap == BaseGap.HurtSince ? "hurt since his back squat was tested" : "his back squat was tested too long ago";
            if (squat.Kilograms / mass.Kilograms < ratio) return string.Create(CultureInfo.InvariantCulture, $"squats {squat.Kilograms / mass.Kilograms:0.00} times his body mass, {ratio:0.##} asked");
        }

        if (exercise.MostBodyMass is { } most && !(player.BodyMass is { } own && own <= most)) return player.BodyMass is null ? "body mass not known, and the exercise is not for heavy players" : "heavier than the exercise is meant for";
        if (exercise.LeastTrainingYears is { } years && !(player.TrainingYears >= years))
            return string.Create(CultureInfo.InvariantCulture, $"{years:0.#} years of training asked{(player.TrainingYears is { } has ? string.Create(CultureInfo.InvariantCulture, $", he has {has:0.#}") : ", his are not known")}");
        return null;
    }
}
