using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Contact;

public class ContactMeasuresTests
{
    private static readonly Mass Ninety = Mass.FromKilograms(90);

    [Fact]
    public void Figures_of_exact_motion_are_exact()
    {
        var m = ContactMeasures.Of(LinearRunner.Trial(), JudgementError.None, Ninety);
        Assert.Equal(0.425, m.Time.Value.Seconds, 1e-12);
        Assert.Equal(30, m.At(ReviewMoment.Contact).ShinLean.Estimate!.Value, 1e-6);
        Assert.Equal(30, m.At(ReviewMoment.Contact).FarShinLean.Estimate!.Value, 1e-6);
        Assert.Equal(30 - 21.25, m.At(ReviewMoment.MidWay).ShinLean.Estimate!.Value, 1e-6);
        Assert.Equal(45, m.At(ReviewMoment.Contact).TrunkLean.Estimate!.Value, 1e-6);
        Assert.Equal(45, m.At(ReviewMoment.FirstMovement).TrunkLean.Estimate!.Value, 1e-6);
        Assert.Equal(-9, m.TrunkGive.Estimate!.Value, 1e-4);
    }

    // Shin at 240 Hz without judgement: 100°/s times 1/(240·√12) s.
    [Fact]
    public void The_doubt_of_the_moment_is_carried_by_the_rate_of_change()
    {
        var shin = ContactMeasures.Of(LinearRunner.Trial(), JudgementError.None).At(ReviewMoment.Contact).ShinLean.Estimate!;
        Assert.Equal(100 / (240 * Math.Sqrt(12)), shin.StandardError!.Value, 1e-4);
        Assert.Contains("moment known to 1.2 ms", shin.Method, StringComparison.Ordinal);
    }

    // The moving limbs shift the centre of mass by their own speed; the hips and the trunk before contact move alike.
    [Fact]
    public void Speed_at_contact_is_that_before_the_touch()
    {
        var m = ContactMeasures.Of(LinearRunner.Trial(), JudgementError.None, Ninety);
        var speed = m.Speed.Estimate!;
        Assert.InRange(speed.Value, LinearRunner.ContactSpeed - 0.1, LinearRunner.ContactSpeed + 0.05);
        Assert.Equal(90 * speed.Value, m.Momentum.Estimate!.Value, 1e-9);
        Assert.Equal(double.Hypot(90 * speed.StandardError!.Value, 0.5 * speed.Value), m.Momentum.Estimate.StandardError!.Value, 1e-9);
    }

    [Fact]
    public void Motion_after_the_touch_does_not_reach_figures_at_contact()
    {
        var trial = LinearRunner.Trial();
        var cut = LinearRunner.Trial(missing: i => i >= 126);
        Assert.Equal(ContactMeasures.Of(trial).At(ReviewMoment.Contact).TrunkLean.Estimate!.Value, ContactMeasures.Of(cut).At(ReviewMoment.Contact).TrunkLean.Estimate!.Value, 1e-12);
        Assert.Contains("do not go on for 0.15 s", ContactMeasures.Of(cut).TrunkGive.WhyNot, StringComparison.Ordinal);
    }

    // 2,000 repetitions with 4 mm of noise a coordinate; an SD of so many is known to 1.6 %, the limits are three times that and a little for the noise in the rate of change.
    [Theory]
    [InlineData(240)]
    [InlineData(60)]
    public void Stated_errors_are_those_of_noisy_points(double rate)
    {
        double shin = 0, speed = 0, shinStated = 0, speedStated = 0;
        const int N = 2000;
        var exact = ContactMeasures.Of(LinearRunner.Trial(rate), JudgementError.None);
        for (var k = 0; k < N; k++)
        {
            var m = ContactMeasures.Of(LinearRunner.Trial(rate, 0.004, k + 1), JudgementError.None);
            Add(m.At(ReviewMoment.Contact).ShinLean, exact.At(ReviewMoment.Contact).ShinLean, ref shin, ref shinStated);
            Add(m.Speed, exact.Speed, ref speed, ref speedStated);
        }
        Assert.InRange(Math.Sqrt(shinStated / shin), 0.95, 1.06);
        Assert.InRange(Math.Sqrt(speedStated / speed), 0.95, 1.06);

        // The doubt of the moment and of what is unseen is the same in all repetitions here and no part of their scatter, so it is taken off.
        static void Add(ContactMeasure noisy, ContactMeasure exact, ref double squares, ref double stated)
        {
            squares += Math.Pow(noisy.Estimate!.Value - exact.Estimate!.Value, 2);
            stated += Math.Pow(noisy.Estimate.StandardError!.Value, 2) - Math.Pow(exact.Estimate.StandardError!.Value, 2);
        }
    }

    [Fact]
    public void What_is_missing_is_said()
    {
        var timed = ContactMeasures.Of(Seen.Trial((100, 202)));
        Assert.Equal("not digitised", timed.Speed.WhyNot);
        Assert.Equal("not digitised", timed.Momentum.WhyNot);
        Assert.All(timed.Postures.SelectMany(p => p.All), m => Assert.Null(m.Estimate));
        var trunk = ContactMeasures.Of(LinearRunner.Trial(legs: false));
        Assert.Equal("no marker for the knee and the ankle", trunk.At(ReviewMoment.Contact).ShinLean.WhyNot);
        Assert.Contains("of body mass; shoulder, hips, knees and ankles are needed", trunk.Speed.WhyNot, StringComparison.Ordinal);
        Assert.Equal("no body mass known", ContactMeasures.Of(LinearRunner.Trial()).Momentum.WhyNot);
        Assert.Equal("too few points near this moment", ContactMeasures.Of(LinearRunner.Trial(missing: i => i is > 100 and < 127)).At(ReviewMoment.Contact).ShinLean.WhyNot);
    }

    // The far leg is 0.2 m higher and its shin leans otherwise: the near one is on the ground; and the other way round.
    [Theory]
    [InlineData(true, 30)]
    [InlineData(false, 50)]
    public void The_shin_of_the_lower_ankle_is_that_on_the_ground(bool farUp, double degrees)
    {
        var trial = LinearRunner.Trial();
        MarkerRole[] lifted = farUp ? [MarkerRole.FarKnee, MarkerRole.FarAnkle] : [MarkerRole.Knee, MarkerRole.Ankle];
        MarkerTrack Moved(MarkerTrack t)
        {
            double[] x = [.. t.XMetres.Select(v => v!.Value)], y = [.. t.YMetres.Select(v => v!.Value)];
            // The far shin is turned to 50 degrees at all times: its ankle put under its knee by that lean.
            if (t.Role == MarkerRole.FarAnkle)
                for (var i = 0; i < x.Length; i++) (x[i], y[i]) = (trial.Digitised![MarkerRole.FarKnee].XMetres[i]!.Value - (0.42 * Math.Sin(50 * Math.PI / 180)), 0.5 - (0.42 * Math.Cos(50 * Math.PI / 180)));
            if (lifted.Contains(t.Role))
                for (var i = 0; i < y.Length; i++) y[i] += 0.3;
            return new(t.Name, t.Role, x, y);
        }

        var m = ContactMeasures.Of(trial with { Digitised = trial.Digitised!.With(trial.Digitised.Tracks.Select(Moved)) }, JudgementError.None);
        Assert.Equal(degrees, m.GroundShinLean.Estimate!.Value, 1e-6);
        Assert.Contains("at one height", ContactMeasures.Of(trial).GroundShinLean.WhyNot, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_that_were_read_have_times()
    {
        var m = ContactMeasures.Of(Seen.Trial((100, 202)) with { Steps = [new(false, 110, 146), new(true, 158, null)] });
        Assert.Equal(0.15, m.Steps[0].Contact!.Value.Value.Seconds, 1e-12);
        Assert.Equal(0.05, m.Steps[0].Flight!.Value.Value.Seconds, 1e-12);
        Assert.Contains("step 1, on the ground", m.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void It_prints_itself()
    {
        var text = ContactMeasures.Of(LinearRunner.Trial(), bodyMass: Ninety).ToString();
        Assert.Contains("time to contact", text, StringComparison.Ordinal);
        Assert.Contains("momentum at contact", text, StringComparison.Ordinal);
    }
}
