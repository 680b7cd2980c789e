using Analytics.Metrics.Load;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Load;

public class VolumeLoadTests
{
    // 5 × 5 × 140 kg = 3500 kg; over a maximum of 180 kg 19.4444; 140/180 = 77.7778 %. Own arithmetic.
    [Fact]
    public void Of_FiveFivesOf140_Is3500()
    {
        var volume = VolumeLoad.Of([new ExerciseSets("back_squat", 5, 5, Mass.FromKilograms(140))]);
        var squat = volume.Of("back_squat")!;
        Assert.Equal(3500, volume.Total.Kilograms, 9);
        Assert.Equal((5, 25), (squat.Sets, squat.Repetitions));
        Assert.Equal((19.4444, 77.7778), (Math.Round(squat.RelativeTo(Mass.FromKilograms(180)), 4), Math.Round(squat.AverageIntensityPercent(Mass.FromKilograms(180)), 4)));
    }

    // 3 × 5 × 100 + 2 × 3 × 120 = 2220; 21 repetitions, mean 105.714; 4 × 8 × 60 = 1920. Own arithmetic.
    [Fact]
    public void Of_SeveralLifts_AreSummedEachAndTogether()
    {
        var volume = VolumeLoad.Of(
        [
            new("bench_press", 4, 8, Mass.FromKilograms(60)), new("back_squat", 3, 5, Mass.FromKilograms(100)), new("back_squat", 2, 3, Mass.FromKilograms(120)),
        ]);
        Assert.Equal(["back_squat", "bench_press"], volume.Lifts.Select(l => l.Lift));
        Assert.Equal([2220, 1920], volume.Lifts.Select(l => Math.Round(l.VolumeLoad.Kilograms, 9)));
        Assert.Equal(105.714, volume.Of("back_squat")!.MeanLoad.Kilograms, 3);
        Assert.Equal((4140d, 9, 53), (Math.Round(volume.Total.Kilograms, 9), volume.Sets, volume.Repetitions));
        Assert.Null(volume.Of("snatch"));
    }

    [Fact]
    public void Of_OwnBodyWithoutAddedLoad_CountsNothingAndSaysSo()
    {
        var volume = VolumeLoad.Of([new ExerciseSets("pull_up", 4, 8, Mass.Zero)]);
        Assert.Equal((0d, 32), (volume.Total.Kilograms, volume.Repetitions));
        Assert.Contains("without added load count 0 kg", volume.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 5, 5)]
    [InlineData("back_squat", 0, 5)]
    [InlineData("back_squat", 5, 0)]
    public void ExerciseSets_HalfFilled_AreRefused(string lift, int sets, int repetitions)
        => Assert.ThrowsAny<ArgumentException>(() => new ExerciseSets(lift, sets, repetitions, Mass.FromKilograms(100)));

    [Fact]
    public void RelativeTo_NoMaximum_IsRefused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => new LiftVolume("back_squat", 5, 25, Mass.FromKilograms(3500)).RelativeTo(Mass.Zero));
}
