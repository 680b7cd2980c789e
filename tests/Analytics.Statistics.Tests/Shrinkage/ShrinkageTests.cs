using Analytics.Statistics.Shrinkage;

namespace Analytics.Statistics.Tests.Shrinkage;

public class ShrinkageTests
{
    private static readonly double[] s_hits = Oracle.Column("efron-morris-1975.csv", 0);

    // Efron & Morris 1977 print mean .265, weight .212, and 1975 the weight 1 − .791 on the arcsine scale.
    [Fact]
    public void JamesStein_BattingAverages_MatchesPrintAndR()
    {
        double[] averages = [.. s_hits.Select(h => h / 45)];
        var result = JamesStein.Of(averages, Oracle.Value("james_stein_raw", "error_variance"));
        Assert.Equal(0.265, result.Mean, 3);
        Assert.Equal(0.212, result.Weight, 3);
        Oracle.Close(Oracle.Value("james_stein_raw", "weight"), result.Weight);
        Oracle.Close(Oracle.Value("james_stein_raw", "first"), result.Values[0]);
        Oracle.Close(Oracle.Value("james_stein_raw", "last"), result.Values[^1]);
    }

    [Fact]
    public void JamesStein_ArcsineScale_MatchesPrintAndR()
    {
        double[] scaled = [.. s_hits.Select(h => Math.Sqrt(45) * Math.Asin(2 * h / 45 - 1))];
        var result = JamesStein.Of(scaled, 1);
        Assert.Equal(0.209, result.Weight, 3);
        Oracle.Close(Oracle.Value("james_stein_arcsine", "first"), result.Values[0]);
        Oracle.Close(Oracle.Value("james_stein_arcsine", "last"), result.Values[^1]);
    }

    // 1977: total squared error .077 for the averages, .022 shrunken, ratio 3.5 (from memory; .0753 and .0213 computed in R).
    [Fact]
    public void JamesStein_RestOfSeason_IsPredictedThreeTimesBetter()
    {
        double[] averages = [.. s_hits.Select(h => h / 45)];
        var rest = Oracle.Column("efron-morris-1975.csv", 1);
        var shrunken = JamesStein.Of(averages, Oracle.Value("james_stein_raw", "error_variance")).Values;
        var own = averages.Zip(rest, (a, b) => (a - b) * (a - b)).Sum();
        var better = shrunken.Zip(rest, (a, b) => (a - b) * (a - b)).Sum();
        Oracle.Close(3.534859504786156, own / better, 1e-9);
    }

    [Fact]
    public void JamesStein_ThreeValues_Throws()
        => Assert.Contains("holds 3 values; at least 4", Assert.Throws<ArgumentException>(() => JamesStein.Of([1, 2, 3], 1)).Message, StringComparison.Ordinal);

    [Fact]
    public void JamesStein_EqualValues_IsTheMean() => Assert.Equal((0, 2), (JamesStein.Of([2, 2, 2, 2], 1).Weight, JamesStein.Of([2, 2, 2, 2], 1).Values[0]));

    private static readonly double[] s_schools = [28, 8, -3, 7, -1, 1, 18, 12];
    private static readonly double[] s_errors = [15, 10, 16, 11, 9, 11, 10, 18];

    // Rubin 1981, eight schools: no spread beyond error is found; centre 7.7, error 4.1 (print from memory; R).
    [Fact]
    public void EmpiricalBayes_EightSchools_FindsNoSpread()
    {
        var fit = EmpiricalBayes.Of(s_schools, s_errors);
        Assert.Equal(0, fit.BetweenVariance);
        Oracle.Close(Oracle.Value("eight_schools", "Q"), fit.Heterogeneity);
        Oracle.Close(Oracle.Value("eight_schools", "centre"), fit.Centre);
        Oracle.Close(Oracle.Value("eight_schools", "centre_error"), fit.CentreError);
        Assert.All(fit.Values, v => Assert.Equal(fit.Centre, v.Value, 12));
    }

    [Fact]
    public void EmpiricalBayes_KnownSpread_AgreesWithR()
    {
        var fit = EmpiricalBayes.Of(s_schools, s_errors, betweenVariance: 25);
        Oracle.Close(Oracle.Value("eight_schools_tau5", "centre"), fit.Centre);
        Oracle.Close(Oracle.Value("eight_schools_tau5", "A"), fit.Values[0].Value);
        Oracle.Close(Oracle.Value("eight_schools_tau5", "C"), fit.Values[2].Value);
    }

    // Equal errors: the moment estimator is the variance of the values less the error variance: var(0, 10, 20) − 9 = 91.
    [Fact]
    public void EmpiricalBayes_EqualErrors_TakesErrorOffTheVariance()
    {
        var fit = EmpiricalBayes.Of([0, 10, 20], [3, 3, 3]);
        Oracle.Close(91, fit.BetweenVariance, 1e-12);
        Oracle.Close(0.91, fit.Values[0].Weight, 1e-12);
    }

    [Fact]
    public void Toward_Borders_KeepOrDropTheValue()
    {
        Assert.Equal((10, 1), (Shrunken.Toward(10, 0, 4, 2).Value, Shrunken.Toward(10, 0, 4, 2).Weight));
        Assert.Equal((4, 0), (Shrunken.Toward(10, 3, 4, 0).Value, Shrunken.Toward(10, 3, 4, 0).Weight));
    }

    [Fact]
    public void EmpiricalBayes_UnequalLists_Throws()
        => Assert.Contains("standardErrors holds 2 values beside 3", Assert.Throws<ArgumentException>(() => EmpiricalBayes.Of([1, 2, 3], [1, 1])).Message, StringComparison.Ordinal);

    // With equal errors Morris's rule is James–Stein's: the batting averages again, weight .212 in print.
    [Fact]
    public void Morris_EqualErrors_IsJamesStein()
    {
        double[] averages = [.. s_hits.Select(h => h / 45)];
        var error = Math.Sqrt(Oracle.Value("james_stein_raw", "error_variance"));
        var result = MorrisShrinkage.Of(averages, [.. averages.Select(_ => error)]);
        Oracle.Close(Oracle.Value("james_stein_raw", "weight"), result.Values[0].Weight, 1e-9);
        Oracle.Close(Oracle.Value("james_stein_raw", "first"), result.Values[0].Value, 1e-9);
    }

    // Six true means from N(0, 1), errors 0.5 to 1.5: the intervals cover 93 to 97 %. Plain empirical Bayes falls short there.
    [Fact]
    public void Morris_FewMeans_CoverWherePlainShrinkageDoesNot()
    {
        var random = new Gaussian(6);
        double[] errors = [0.5, 0.7, 0.9, 1.1, 1.3, 1.5];
        const int Runs = 4000;
        int covered = 0, plainly = 0;
        for (var run = 0; run < Runs; run++)
        {
            double[] truth = [.. errors.Select(_ => random.Next())];
            double[] seen = [.. truth.Zip(errors, (t, e) => t + e * random.Next())];
            covered += MorrisShrinkage.Of(seen, errors).Values.Zip(truth, (v, t) => Math.Abs(v.Value - t) < 1.959964 * v.StandardError).Count(c => c);
            plainly += EmpiricalBayes.Of(seen, errors).Values.Zip(truth, (v, t) => Math.Abs(v.Value - t) < 1.959964 * v.StandardError).Count(c => c);
        }

        Assert.InRange(covered / (6.0 * Runs), 0.93, 0.97);
        Assert.True(plainly / (6.0 * Runs) < 0.90, $"{plainly / (6.0 * Runs):F3}");
    }

    [Fact]
    public void Morris_ThreeMeans_Throws()
        => Assert.Contains("holds 3 values; at least 4", Assert.Throws<ArgumentException>(() => MorrisShrinkage.Of([1, 2, 3], [1, 1, 1])).Message, StringComparison.Ordinal);

    // R 4.2.2: uniroot on the weighted sum of squares at qchisq(.025, 7); the lower limit is 0 as Q stays below qchisq(.975, 7).
    [Fact]
    public void BetweenInterval_EightSchools_AgreesWithR()
    {
        var interval = EmpiricalBayes.Of(s_schools, s_errors).BetweenInterval();
        Assert.Equal(0, interval.Low);
        Oracle.Close(270.367162256186, interval.High, 1e-9);
    }

    [Fact]
    public void Shrinkage_ShiftScaleOrder_FollowTheValues()
    {
        double[] values = [.. s_schools.Select(v => 10 - 3 * v).Reverse()], errors = [.. s_errors.Select(e => 3 * e).Reverse()];
        MorrisShrinkage own = MorrisShrinkage.Of(s_schools, s_errors), moved = MorrisShrinkage.Of(values, errors);
        JamesStein plain = JamesStein.Of(s_schools, 50), scaled = JamesStein.Of(values, 450);
        for (var i = 0; i < s_schools.Length; i++)
        {
            Oracle.Close(10 - 3 * own.Values[i].Value, moved.Values[^(i + 1)].Value, 1e-11);
            Oracle.Close(3 * own.Values[i].StandardError, moved.Values[^(i + 1)].StandardError, 1e-11);
            Oracle.Close(10 - 3 * plain.Values[i], scaled.Values[^(i + 1)], 1e-11);
        }
    }

    // Spread smaller than the error explains: the plain rule turns the values round, the positive part stops at the mean.
    [Fact]
    public void JamesStein_PositivePart_StopsAtTheMean()
    {
        double[] values = [1, 2, 3, 4, 5];
        Oracle.Close(1 - 2 * 20.0 / 10, JamesStein.Of(values, 20, positivePart: false).Weight, 1e-14);
        Assert.All(JamesStein.Of(values, 20).Values, v => Assert.Equal(3, v));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(0)]
    [InlineData(-1)]
    public void BadErrors_AreNamed(double bad)
    {
        Assert.Contains("errorVariance is", Assert.ThrowsAny<ArgumentException>(() => JamesStein.Of([1, 2, 3, 4], bad)).Message, StringComparison.Ordinal);
        Assert.Contains("standardErrors is", Assert.ThrowsAny<ArgumentException>(() => EmpiricalBayes.Of([1, 2, 3, 4], [1, 1, 1, bad])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void BadValues_AreNamed()
    {
        Assert.Contains("values[2] is NaN", Assert.ThrowsAny<ArgumentException>(() => EmpiricalBayes.Of([1, 2, double.NaN], [1, 1, 1])).Message, StringComparison.Ordinal);
        Assert.Contains("betweenVariance is -1", Assert.ThrowsAny<ArgumentException>(() => EmpiricalBayes.Of([1, 2], [1, 1], -1)).Message, StringComparison.Ordinal);
        Assert.Contains("betweenVariance is -1", Assert.ThrowsAny<ArgumentException>(() => Shrunken.Toward(1, 1, 0, -1)).Message, StringComparison.Ordinal);
        Assert.Contains("raw is", Assert.ThrowsAny<ArgumentException>(() => Shrunken.Toward(double.NegativeInfinity, 1, 0, 1)).Message, StringComparison.Ordinal);
    }
}
