using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Metrics.Tests.Sprinting.Fits;

/// <summary>
/// Least-squares fits of made-up runs. Expected values: 50-digit arithmetic, stated to the digits typed;
/// a tolerance is half a unit in the last digit or the parameter tolerance 1e-7, whichever is larger.
/// </summary>
public class SplitFitterTests
{
    [Fact]
    public void Fit_ThreeYardGates_IsTheWorkedExample()
    {
        var curve = Fitted(Gates.ThreeGates, StartModel.Still);
        Is(curve.TopSpeed, 9.42518477657, 0.230972794);
        Is(curve.TimeConstant, 0.708181936394, 0.0719410625);
        Assert.Equal(1, curve.DegreesOfFreedom);
        // t(0.975) with 1 df is 12.7062 (any table): one gate too many is no basis for a narrow interval.
        Assert.Equal(9.42518477657 - (12.7062047 * 0.230972794), curve.TopSpeed.Interval!.Value.Low, 1e-6);
        Assert.Equal(9.42518477657 + (12.7062047 * 0.230972794), curve.TopSpeed.Interval!.Value.High, 1e-6);
    }

    [Fact]
    public void Fit_CleanRun_TimeResponse()
    {
        var fit = SplitFitter.Fit(Gates.FiveGates);
        Is(fit.Curve!.TopSpeed, 8.5034023898, 0.0148669352);
        Is(fit.Curve.TimeConstant, 1.10023886954, 0.00642482043);
        Assert.Equal(3.573436723e-5, fit.Numerics!.Rss!.Value, 1e-14);
        Assert.Equal(0.954519879, fit.Curve.Covariance!.Correlation(0, 1), 1e-7);
        Assert.Equal(3, fit.DegreesOfFreedom);
        Assert.Equal(5, fit.N);
        Assert.Equal(0, fit.Numerics.Residuals.Sum(r => r * r) - 3.573436723e-5, 1e-14);
    }

    [Fact]
    public void Fit_CleanRun_DistanceResponse()
    {
        var fit = SplitFitter.Fit(Gates.FiveGates, StartModel.Still, SplitResponse.Distance);
        Is(fit.Curve!.TopSpeed, 8.50289632797, 0.0144824615);
        Is(fit.Curve.TimeConstant, 1.09998066094, 0.00646620339);
        Assert.Equal(0.001964485921, fit.Numerics!.Rss!.Value, 1e-12);
    }

    [Fact]
    public void Fit_CleanRun_WithOffset()
    {
        var fit = SplitFitter.Fit(Gates.FiveGates, StartModel.Offset);
        Is(fit.Curve!.TopSpeed, 8.50177473714, 0.0322228405);
        Is(fit.Curve.TimeConstant, 1.09844460139, 0.0303676322);
        Is(fit.Curve.Offset!, 0.000927961152268, 0.01517433);
        Assert.Equal(3.566731206e-5, fit.Numerics!.Rss!.Value, 1e-14);
    }

    [Fact]
    public void Fit_RunInOfHalfAMetre_OnlyTheRightModelIsUnbiased()
    {
        var still = SplitFitter.Fit(Gates.RunInHalfMetre);
        Is(still.Curve!.TopSpeed, 8.187218377, 0.1037743);
        Is(still.Curve.TimeConstant, 0.6167798994, 0.04017051);
        Assert.Equal(0.00511626003, still.Numerics!.Rss!.Value, 1e-10);

        var offset = SplitFitter.Fit(Gates.RunInHalfMetre, StartModel.Offset);
        Is(offset.Curve!.TopSpeed, 8.474077938, 0.007226736);
        Is(offset.Curve.TimeConstant, 1.030870658, 0.007130112);
        Is(offset.Curve.Offset!, -0.2676166557, 0.00389155);
        Assert.Equal(3.84492562e-6, offset.Numerics!.Rss!.Value, 1e-13);

        var runIn = SplitFitter.Fit(Gates.RunInHalfMetre, StartModel.RunIn);
        Is(runIn.Curve!.TopSpeed, 8.500097044, 0.00139354);
        Is(runIn.Curve.TimeConstant, 1.100357417, 0.001636791);
        Is(runIn.Curve.RunIn!, 0.5007245651, 0.002586199);
        Assert.Equal(1.07543769e-7, runIn.Numerics!.Rss!.Value, 1e-14);
    }

    [Fact]
    public void Fit_RunInOfAThirdOfAMetre_OnlyTheRightModelIsUnbiased()
    {
        var still = SplitFitter.Fit(Gates.RunInThirdMetre);
        Assert.Equal(8.221934589, still.Curve!.TopSpeed.Value, 1e-7);
        Assert.Equal(0.7000587219, still.Curve.TimeConstant.Value, 1e-7);
        Assert.Equal(0.00378568751, still.Numerics!.Rss!.Value, 1e-10);
        var offset = Fitted(Gates.RunInThirdMetre, StartModel.Offset);
        Assert.Equal(8.483617443, offset.TopSpeed.Value, 1e-7);
        Assert.Equal(1.058634411, offset.TimeConstant.Value, 1e-7);
        Assert.Equal(-0.2236008842, offset.Offset!.Value, 1e-7);
        var runIn = Fitted(Gates.RunInThirdMetre, StartModel.RunIn);
        Assert.Equal(8.50036423, runIn.TopSpeed.Value, 1e-7);
        Assert.Equal(1.102012314, runIn.TimeConstant.Value, 1e-7);
        Assert.Equal(0.3032990956, runIn.RunIn!.Value, 1e-7);
    }

    // Exact times of V = 8.5, T = 1.1 at 5, 10, 20, 30, 40 m, read on a clock that starts early by a reaction.
    [Theory]
    [InlineData(0.15, 8.818425918, 1.421621525, 0.00182771705)]
    [InlineData(0.20, 8.953404799, 1.545423463, 0.00328312228)]
    public void Fit_ReactionLeftIn_IsAbsorbedOnlyByTheOffset(double reaction, double topSpeed, double timeConstant, double rss)
    {
        var splits = Gates.Metres(
            (5, 1.37230772240587 + reaction), (10, 2.11575207279759 + reaction), (20, 3.40307406151933 + reaction),
            (30, 4.61280843525 + reaction), (40, 5.80024102735853 + reaction));
        var still = SplitFitter.Fit(splits);
        Assert.Equal(topSpeed, still.Curve!.TopSpeed.Value, 1e-7);
        Assert.Equal(timeConstant, still.Curve.TimeConstant.Value, 1e-7);
        Assert.Equal(rss, still.Numerics!.Rss!.Value, 1e-10);

        var offset = Fitted(splits, StartModel.Offset);
        Assert.Equal(8.5, offset.TopSpeed.Value, 1e-8); // the 30 m time is given to 1e-11
        Assert.Equal(1.1, offset.TimeConstant.Value, 1e-8);
        Assert.Equal(reaction, offset.Offset!.Value, 1e-8);
    }

    // Exact times of V = 8.5, T = 1.1 with a run-in; printed to 1e-11 s.
    [Theory]
    [InlineData(0.3, 1.13045759979, 1.86602423472, 3.14908439035, 4.35770394563, 5.54478351225)]
    [InlineData(0.5, 1.0731880766, 1.80382045299, 3.08414816464, 4.29204654973, 5.47889722692)]
    [InlineData(1.0, 0.981682431721, 1.70096409122, 2.97481686413, 4.18098613606, 5.36728635155)]
    public void Fit_ExactRunIn_IsRecovered(double metres, double t5, double t10, double t20, double t30, double t40)
    {
        var splits = Gates.Metres((5, t5), (10, t10), (20, t20), (30, t30), (40, t40));
        var curve = Fitted(splits, StartModel.RunIn);
        Assert.Equal(8.5, curve.TopSpeed.Value, 1e-7);
        Assert.Equal(1.1, curve.TimeConstant.Value, 1e-7);
        Assert.Equal(metres, curve.RunIn!.Value, 1e-7);
        Assert.Null(curve.Offset);

        var byDistance = SplitFitter.Fit(splits, StartModel.RunIn, SplitResponse.Distance).Curve!;
        Assert.Equal(8.5, byDistance.TopSpeed.Value, 1e-7);
        Assert.Equal(metres, byDistance.RunIn!.Value, 1e-7);
    }

    // The same with the clock 0.1 s early, over seven gates; the two start terms are all but one, so only four digits survive 1e-11 s.
    [Fact]
    public void Fit_OffsetAndRunIn_RecoversBothFromSevenGates()
    {
        var splits = Gates.Metres((2, 0.5351300884956 + 0.1), (5, 1.0731880766 + 0.1), (10, 1.80382045299 + 0.1), (15, 2.459893852094 + 0.1),
            (20, 3.08414816464 + 0.1), (30, 4.29204654973 + 0.1), (40, 5.47889722692 + 0.1));
        var curve = Fitted(splits, StartModel.OffsetAndRunIn);
        Assert.Equal(8.5, curve.TopSpeed.Value, 1e-4);
        Assert.Equal(1.1, curve.TimeConstant.Value, 1e-4);
        Assert.Equal(0.1, curve.Offset!.Value, 1e-3);
        Assert.Equal(0.5, curve.RunIn!.Value, 1e-3);
    }

    // Wide receivers with all three times, means of 115 (public combine results 1999-2015): fit of the means.
    // Clark 2019 prints 0.768 and 0.773 s for T by another route on other years; the means give 0.70.
    [Theory]
    [InlineData(1.5492, 2.5961, 4.4682, 9.69266431, 0.7025239507, 0.00113087375)]
    [InlineData(1.5557, 2.6054, 4.4935, 9.618600403, 0.6982256115, 0.000978740281)]
    public void Fit_CombineMeans_GiveTheStatedCurve(double t10, double t20, double t40, double topSpeed, double timeConstant, double rss)
    {
        var fit = SplitFitter.Fit(Gates.Yards((10, t10), (20, t20), (40, t40)));
        // The means are typed to 1e-4 s: the fit of the unrounded means moves by that much.
        Assert.Equal(topSpeed, fit.Curve!.TopSpeed.Value, 3e-3);
        Assert.Equal(timeConstant, fit.Curve.TimeConstant.Value, 1e-3);
        Assert.Equal(rss, fit.Numerics!.Rss!.Value, 1e-5);
    }

    [Fact]
    public void Fit_YardsOrMetres_SayTheSame()
    {
        var yards = Fitted(Gates.ThreeGates, StartModel.Still);
        var metres = Fitted(Gates.Metres((9.144, 1.58), (18.288, 2.66), (36.576, 4.58)), StartModel.Still);
        Assert.Equal(yards.TopSpeed.Value, metres.TopSpeed.Value, 1e-12);
        Assert.Equal(yards.TimeConstant.Value, metres.TimeConstant.Value, 1e-12);
    }

    [Theory]
    [InlineData(0, StartModel.Still, "0 gates: the still start model needs 3")]
    [InlineData(1, StartModel.Still, "1 gate: the still start model needs 3")]
    [InlineData(2, StartModel.Still, "2 gates: the still start model needs 3")]
    [InlineData(3, StartModel.Offset, "3 gates: the start with clock offset model needs 4")]
    [InlineData(3, StartModel.RunIn, "3 gates: the start with unseen run-in model needs 4")]
    [InlineData(5, StartModel.OffsetAndRunIn, "5 gates: the start with clock offset and unseen run-in model needs 6")]
    public void Fit_TooFewGates_IsAResultWithWords(int gates, StartModel model, string words)
    {
        var fit = SplitFitter.Fit([.. Gates.RunInHalfMetre.Take(gates)], model);
        Assert.Equal(SplitFitState.TooFewGates, fit.State);
        Assert.Equal(words, fit.Explanation);
        Assert.Null(fit.Curve);
        Assert.Null(fit.Numerics);
        Assert.Equal(gates, fit.N);
    }

    [Fact]
    public void Fit_SplitsThatDoNotRise_SayWhichGate()
    {
        var backwards = SplitFitter.Fit(Gates.Metres((10, 1.9), (20, 3.2), (30, 3.1)));
        Assert.Equal(SplitFitState.BadSplits, backwards.State);
        Assert.Equal("gate 3 at 30 m reads 3.1 s, not after 3.2 s: times must rise from above 0 s", backwards.Explanation);
        var twice = SplitFitter.Fit(Gates.Metres((10, 1.9), (10, 2.0), (30, 3.1)));
        Assert.Equal("gate 2 stands at 10 m, not beyond 10 m: distances must rise from above 0 m", twice.Explanation);
        Assert.Equal(SplitFitState.BadSplits, SplitFitter.Fit(Gates.Metres((0, 0.1), (10, 2.0), (30, 3.1))).State);
        Assert.Equal(SplitFitState.BadSplits, SplitFitter.Fit(Gates.Metres((5, 0), (10, 2.0), (30, 3.1))).State);
    }

    [Fact]
    public void Fit_NoRunInInTheData_SaysSo()
    {
        // The clock started 0.15 s early: the opposite of a run-in.
        var fit = SplitFitter.Fit(Gates.Metres((5, 1.522), (10, 2.266), (20, 3.553), (30, 4.763), (40, 5.950)), StartModel.RunIn);
        Assert.Equal(SplitFitState.NoRunInSeen, fit.State);
        Assert.Null(fit.Curve);
        Assert.Equal(0, fit.Numerics!.Parameters[2]);
        Assert.Contains("0 m", fit.Explanation, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.0, 1.9, 2.7, 3.4)] // ever faster: no top speed in sight
    [InlineData(0.5, 2.0, 4.0, 7.0)] // ever slower: nothing but slowing down
    public void Fit_NotARunTowardsTopSpeed_HasNoCurveAndNoNaN(double t1, double t2, double t3, double t4)
    {
        foreach (var model in new[] { StartModel.Still, StartModel.Offset, StartModel.RunIn })
        {
            var fit = SplitFitter.Fit(Gates.Metres((5, t1), (10, t2), (15, t3), (20, t4)), model);
            if (fit.Curve is { } curve)
            {
                Assert.True(double.IsFinite(curve.TopSpeed.StandardError!.Value) && double.IsFinite(curve.TimeConstant.Value));
                continue;
            }
            Assert.True(fit.State is SplitFitState.NoCurve or SplitFitState.NoRunInSeen);
            Assert.All(fit.Numerics!.Parameters, p => Assert.True(double.IsFinite(p)));
            Assert.NotEmpty(fit.Explanation);
        }
    }

    // Random rising numbers, now and then of absurd size: whatever comes out is finite and has words.
    [Fact]
    public void Fit_AnyRisingSplits_NeverThrowsAndIsNeverNaN()
    {
        var random = new Random(3);
        for (var run = 0; run < 3000; run++)
        {
            var (distance, time) = (0.0, 0.0);
            List<(double, double)> gates = [];
            for (var gate = 0; gate < 7; gate++)
            {
                distance += (0.001 + (10 * random.NextDouble())) * (random.Next(20) == 0 ? Math.Pow(10, random.Next(-200, 200)) : 1);
                time += (0.001 + (2 * random.NextDouble())) * (random.Next(20) == 0 ? Math.Pow(10, random.Next(-200, 200)) : 1);
                gates.Add((distance, time));
            }
            foreach (var model in Enum.GetValues<StartModel>())
                foreach (var response in Enum.GetValues<SplitResponse>())
                    IsFinite(SplitFitter.Fit(Gates.Metres([.. gates]), model, response));
        }
    }

    private static void IsFinite(SplitFit fit)
    {
        Assert.NotEmpty(fit.Explanation);
        if (fit.Numerics is { } numerics) Assert.All(numerics.Parameters.Concat(numerics.Residuals), v => Assert.True(double.IsFinite(v)));
        if (fit.Curve is not { } curve) return;
        Estimate[] estimates =
        [
            curve.TopSpeed, curve.TimeConstant, curve.InitialAcceleration, curve.Offset ?? curve.TopSpeed, curve.RunIn ?? curve.TopSpeed,
            curve.SpeedAt(Length.FromYards(10)), curve.TimeAt(Length.FromYards(10)), curve.NewTimeAt(Length.FromMetres(40)),
        ];
        Assert.All(estimates, e => Assert.True(double.IsFinite(e.Value) && double.IsFinite(e.StandardError!.Value), $"{e.Method}: {e.Value} ± {e.StandardError}"));
    }

    private static SprintCurve Fitted(IReadOnlyList<Split> splits, StartModel model)
    {
        var fit = SplitFitter.Fit(splits, model);
        Assert.Equal(SplitFitState.Fitted, fit.State);
        return fit.Curve!;
    }

    private static void Is(Estimate actual, double value, double standardError)
    {
        Assert.Equal(value, actual.Value, 1e-7);
        Assert.Equal(0, (actual.StandardError!.Value / standardError) - 1, 1e-5);
    }
}
