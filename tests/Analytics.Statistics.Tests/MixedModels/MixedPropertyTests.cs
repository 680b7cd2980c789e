using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>What must not matter does not: where a scale has its zero, its unit, and the order of athletes and rows.</summary>
public sealed class MixedPropertyTests
{
    private static readonly List<string[]> s_rows = [.. Oracle.Rows("mixed-unbalanced.csv")];

    [Theory]
    [InlineData(1e6, 1)]
    [InlineData(-250, 3.7)]
    [InlineData(0, 1e-9)]
    [InlineData(0, 1e9)]
    public void Shift_and_scale_of_the_response_pass_through(double shift, double scale)
    {
        var (plain, moved) = (Fit(y => y), Fit(y => shift + (scale * y)));
        var digits = shift == 0 ? 1e-9 : 1e-6;
        Oracle.Close(shift + (scale * plain.Coefficients[0]), moved.Coefficients[0], digits);
        Oracle.Close(scale * plain.Coefficients[1], moved.Coefficients[1], digits);
        Oracle.Close(scale * scale * plain.ResidualVariance, moved.ResidualVariance, digits);
        for (var k = 0; k < 2; k++) Oracle.Close(scale * scale * plain.RandomCovariance![k, k], moved.RandomCovariance![k, k], digits);
        Oracle.Close(plain.RandomCorrelation(0, 1)!.Value, moved.RandomCorrelation(0, 1)!.Value, 1e-5);
        Oracle.Close(plain.FixedEffects[1].DegreesOfFreedom, moved.FixedEffects[1].DegreesOfFreedom, 1e-6);
        Oracle.Close(scale * plain.Effects[7].Effects[0].Value, moved.Effects[7].Effects[0].Value, 10 * digits);
    }

    [Theory]
    [InlineData(0, 0.001)]
    [InlineData(0, 86400)]
    [InlineData(45000, 1)]
    public void Shift_and_scale_of_the_day_pass_through(double shift, double scale)
    {
        var (plain, moved) = (Fit(y => y), Fit(y => y, d => shift + (scale * d)));
        Oracle.Close(plain.MinusTwoLogLikelihood, moved.MinusTwoLogLikelihood + (2 * Math.Log(1 / scale)), 1e-10);
        Oracle.Close(plain.Coefficients[1] / scale, moved.Coefficients[1], 1e-8);
        Oracle.Close(plain.RandomCovariance![1, 1] / (scale * scale), moved.RandomCovariance![1, 1], 1e-7);
        Oracle.Close(plain.FixedEffects[1].DegreesOfFreedom, moved.FixedEffects[1].DegreesOfFreedom, 1e-7);
        foreach (var (a, b) in plain.FittedValues().Zip(moved.FittedValues())) Oracle.Close(a, b, 1e-8);
        Assert.Empty(moved.Boundary);
    }

    [Fact]
    public void The_order_of_athletes_and_rows_does_not_matter()
    {
        var plain = Fit(y => y);
        var random = new Random(3);
        foreach (var rows in new[] { [.. s_rows.AsEnumerable().Reverse()], s_rows.OrderBy(_ => random.Next()).ToList() })
        {
            var other = Fit(y => y, d => d, rows);
            Oracle.Close(plain.MinusTwoLogLikelihood, other.MinusTwoLogLikelihood, 1e-13);
            for (var j = 0; j < 2; j++) Oracle.Close(plain.FixedEffects[j].DegreesOfFreedom, other.FixedEffects[j].DegreesOfFreedom, 1e-9);
            foreach (var group in plain.Effects)
            {
                var same = other.Effects.Single(e => e.Group == group.Group);
                Assert.Equal(group.Rows, same.Rows);
                for (var k = 0; k < 2; k++) Oracle.Close(group.Effects[k].Value, same.Effects[k].Value, 1e-8);
            }
        }
    }

    [Fact]
    public void A_linear_map_of_the_fixed_effects_gives_the_same_contrasts()
    {
        var design = MixedExamples.Unbalanced();
        var other = ModelDesign.Of(MixedExamples.Numbers(s_rows, 4), MixedExamples.Texts(s_rows, 0), "y", "athlete").WithoutIntercept()
            .Factor("position", MixedExamples.Texts(s_rows, 1)).Covariate("day", MixedExamples.Numbers(s_rows, 2)).RandomIntercept();
        Assert.Equal(["position: back", "position: line", "position: skill", "day"], other.FixedNames);
        var means = other.Fit().Require();
        var reference = ModelDesign.Of(MixedExamples.Numbers(s_rows, 4), MixedExamples.Texts(s_rows, 0), "y", "athlete")
            .Factor("position", MixedExamples.Texts(s_rows, 1), "skill").Covariate("day", MixedExamples.Numbers(s_rows, 2)).RandomIntercept().Fit().Require();
        var difference = means.Contrast("back − skill", [1, 0, -1, 0]);
        var named = reference.FixedEffects.Single(f => f.Name == "position: back");
        Oracle.Close(named.Value, difference.Value, 1e-9);
        Oracle.Close(named.StandardError, difference.StandardError, 1e-9);
        Oracle.Close(named.DegreesOfFreedom, difference.DegreesOfFreedom, 1e-8);
        var point = new ModelPoint().With("day", 10);
        var byPoints = reference.Difference("same", point.With("position", "back"), point.With("position", "skill"));
        Oracle.Close(named.Value, byPoints.Value, 1e-9);
        Assert.Equal(6, design.FixedNames.Count);
    }

    private static MixedModel Fit(Func<double, double> response, Func<double, double>? day = null, List<string[]>? rows = null)
    {
        rows ??= s_rows;
        return ModelDesign.Of([.. MixedExamples.Numbers(rows, 4).Select(response)], MixedExamples.Texts(rows, 0), "y", "athlete")
            .Covariate("day", [.. MixedExamples.Numbers(rows, 2).Select(day ?? (d => d))]).Factor("position", MixedExamples.Texts(rows, 1)).RandomIntercept().RandomSlope("day").Fit().Require();
    }
}
