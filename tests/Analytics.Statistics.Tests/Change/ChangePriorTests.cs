using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class ChangePriorTests
{
    private static readonly double[] s_changes = [1.2, 4.5, -0.3, 6.1, 2.2, 7.9, 0.4, 3.3], s_errors = [1, 1.2, 0.9, 1.5, 1, 1.1, 0.8, 1.3];

    private static IndividualChange[] Squad(Func<double, double>? change = null, double scale = 1)
        => [.. s_changes.Zip(s_errors, (c, e) => new IndividualChange((change ?? (x => x))(c), scale * e, double.PositiveInfinity))];

    // R 4.2.2, by hand: DerSimonian–Laird, uniroot on the weighted sum of squares, Morris's formula.
    [Fact]
    public void OfSquad_EightPlayers_AgreesWithR()
    {
        var prior = ChangePrior.OfSquad(Squad());
        Oracle.Close(Math.Sqrt(7.02726056877513), prior.StandardDeviation);
        Oracle.Close(3.05830689372303, prior.Mean);
        Oracle.Close(1.01577654945070, prior.MeanError);
        Oracle.Close(Math.Sqrt(2.41296120724533), prior.SpreadInterval!.Value.Low, 1e-9);
        Oracle.Close(Math.Sqrt(32.70253607887364), prior.SpreadInterval!.Value.High, 1e-9);
        var posterior = ChangePosterior.Of(Squad()[1], prior);
        Oracle.Close(4.324868465327104, posterior.Mean);
        Oracle.Close(1.139828185375485, posterior.StandardDeviation);
        Oracle.Close(0.998232869684942, posterior.Shares(1).Above);
        Assert.Equal(2, posterior.Shares(1).Alternatives.Count);
        Assert.Contains("over the interval of the prior's SD", posterior.Shares(1).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OfSquad_ShiftAndScale_FollowTheUnit()
    {
        ChangePrior own = ChangePrior.OfSquad(Squad()), moved = ChangePrior.OfSquad(Squad(c => 5 + 2.2 * c, 2.2));
        Oracle.Close(5 + 2.2 * own.Mean, moved.Mean, 1e-11);
        Oracle.Close(2.2 * own.StandardDeviation, moved.StandardDeviation, 1e-11);
        Oracle.Close(2.2 * own.SpreadInterval!.Value.High, moved.SpreadInterval!.Value.High, 1e-9);
    }

    [Fact]
    public void OfSquad_NoTrueSpread_PullsAllToTheMeanWithItsError()
    {
        IndividualChange[] alike = [.. new[] { 1, 2.4, 0.2, 1.7 }.Select(c => new IndividualChange(c, 1, 9))];
        var prior = ChangePrior.OfSquad(alike);
        Assert.Equal(0, prior.StandardDeviation);
        Assert.Equal(0, prior.SpreadInterval!.Value.Low);
        Assert.True(prior.SpreadInterval!.Value.High > 0);
        var posterior = ChangePosterior.Of(alike[0], prior);
        // Four athletes hardly tell that there is no spread: the pull stops at (k − 3)/(k − 1) = 1/3.
        Oracle.Close(alike[0].Difference - (alike[0].Difference - prior.Mean) / 3, posterior.Mean);
        Assert.True(posterior.StandardDeviation > 0.5);
        Assert.Contains("differ no more than their errors explain", prior.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OfSquad_MoreAlikeThanErrorsAllow_SaysTheErrorsMayBeTooLarge()
        => Assert.Contains("the errors may be too large", ChangePrior.OfSquad([.. new[] { 1, 1.01, 0.99, 1 }.Select(c => new IndividualChange(c, 1, 9))]).ToString(), StringComparison.Ordinal);

    // 20 athletes, errors 0.5 to 1.5, true changes from N(1, 1): intervals of the spread cover 95 % exactly (standard error 0.5 points), those of
    // single athletes nearly.
    [Fact]
    public void OfSquad_TwentyPlayers_IntervalsCover()
    {
        var random = new Gaussian(21);
        const int Runs = 2000;
        int spread = 0, single = 0;
        for (var run = 0; run < Runs; run++)
        {
            double[] truth = [.. Enumerable.Range(0, 20).Select(_ => 1 + random.Next())];
            IndividualChange[] squad = [.. truth.Select((t, i) => (t, e: 0.5 + i / 19.0)).Select(a => new IndividualChange(a.t + a.e * random.Next(), a.e, double.PositiveInfinity))];
            var prior = ChangePrior.OfSquad(squad);
            if (prior.SpreadInterval!.Value.Contains(1)) spread++;
            single += truth.Where((t, i) => ChangePosterior.Of(squad[i], prior).Interval().Contains(t)).Count();
        }

        Assert.InRange(spread / (double)Runs, 0.9305, 0.9695);
        Assert.InRange(single / (20.0 * Runs), 0.92, 0.955);
    }

    [Fact]
    public void BadPriors_AreRefusedInWords()
    {
        Assert.Contains("State a prior instead", Assert.Throws<ArgumentException>(() => ChangePrior.OfSquad(Squad()[..2])).Message, StringComparison.Ordinal);
        Assert.Contains("standardDeviation is 0; allowed: above 0", Assert.Throws<ArgumentOutOfRangeException>(() => ChangePrior.Stated(0, 0, "coach")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => ChangePrior.Stated(double.NaN, 1, "coach"));
        Assert.Throws<ArgumentException>(() => ChangePrior.Stated(0, 1, " "));
        Assert.Contains("error of 0", Assert.Throws<InvalidOperationException>(() => ChangePosterior.Of(new IndividualChange(1, 0, 5), ChangePrior.Stated(0, 1, "coach"))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => ChangePosterior.Of(Squad()[0], ChangePrior.Stated(0, 1, "coach")).Shares(-1));
    }
}
