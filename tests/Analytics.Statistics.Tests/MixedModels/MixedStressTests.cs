using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>Small, uneven and odd data: every fit ends in a model of finite numbers or in words, and more freedom never fits worse.</summary>
public sealed class MixedStressTests
{
    [Fact]
    public void Odd_data_end_in_finite_numbers_or_in_words()
    {
        var random = new Random(20);
        var endings = new Dictionary<MixedEnding, int>();
        for (var round = 0; round < 300; round++)
        {
            var design = Made(random, round);
            var reml = round % 2 == 0 ? LikelihoodCriterion.Reml : LikelihoodCriterion.Ml;
            var small = design.RandomIntercept();
            var fits = new[] { small.Fit(reml), small.RandomSlope("day").Uncorrelated().Fit(reml), small.RandomSlope("day").Fit(reml) };
            foreach (var fit in fits)
            {
                endings[fit.Ending] = endings.GetValueOrDefault(fit.Ending) + 1;
                Assert.NotEmpty(fit.Explanation);
                if (fit.Model is { } model) AllFinite(model, round);
            }

            if (fits[0].Model is { } one && fits[2].Model is { } two)
                Assert.True(two.MinusTwoLogLikelihood <= one.MinusTwoLogLikelihood + 1e-7, $"round {round}: {one.MinusTwoLogLikelihood} then {two.MinusTwoLogLikelihood}");
        }

        Assert.True(endings.GetValueOrDefault(MixedEnding.NotConverged) == 0, string.Join(", ", endings));
        Assert.True(endings[MixedEnding.Converged] > 100 && endings[MixedEnding.OnBoundary] > 100, string.Join(", ", endings));
    }

    private static ModelDesign Made(Random random, int round)
    {
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var (level, slope) = (Math.Pow(10, random.Next(-2, 3)) * (round % 3 == 0 ? 0 : 1), round % 4 == 0 ? 0 : Math.Pow(10, random.Next(-2, 2)));
        var (y, day, athlete) = (new List<double>(), new List<double>(), new List<string>());
        for (var a = 0; a < random.Next(2, 15); a++)
        {
            var (own, gain) = (level * Normal(), slope * Normal());
            for (var i = random.Next(1, 7); i > 0; i--)
            {
                day.Add(random.Next(0, 8) + (round % 5 == 0 ? 20000 : 0));
                y.Add(100 + own + (gain * day[^1]) + Normal());
                athlete.Add($"a{a}");
            }
        }

        return ModelDesign.Of(y, athlete).Covariate("day", day);
    }

    private static void AllFinite(MixedModel model, int round)
    {
        var numbers = model.FixedEffects.SelectMany(f => new[] { f.Value, f.StandardError, f.DegreesOfFreedom, f.P, f.Interval.Low, f.Interval.High })
            .Concat(model.Variances.Select(v => v.StandardDeviation))
            .Concat(model.Effects.SelectMany(e => e.Effects).SelectMany(e => new[] { e.Value, e.ConditionalStandardError, e.PredictionStandardError }))
            .Append(model.MinusTwoLogLikelihood);
        Assert.True(numbers.All(double.IsFinite), $"round {round}: {model}");
        Assert.True(model.FixedEffects.All(f => f.DegreesOfFreedom > 0 && f.StandardError > 0), $"round {round}: {model}");
    }
}
