using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Tests;

public class RandomNumbersTests
{
    /// <summary>First outputs of the authors' C program for the state 1, 2, 3, 4, as many libraries print them in their tests.</summary>
    [Fact]
    public void Next_FromStateOneToFour_GivesReferenceOutputs()
    {
        var random = new RandomNumbers(1, 2, 3, 4);
        ulong[] expected = [11520, 0, 1509978240, 1215971899390074240, 1216172134540287360, 607988272756665600, 16172922978634559625];
        Assert.Equal(expected, expected.Select(_ => random.Next()));
    }

    /// <summary>SplitMix64 from state 0; the same widely printed reference values.</summary>
    [Fact]
    public void Split_FromZero_GivesReferenceOutputs()
    {
        ulong state = 0;
        ulong[] expected = [16294208416658607535, 7960286522194355700, 487617019471545679, 17909611376780542444];
        Assert.Equal(expected, expected.Select(_ => RandomNumbers.Split(ref state)));
    }

    [Fact]
    public void For_AnotherPurposeSubjectOrOccasion_GivesAnotherStream()
    {
        var first = new[]
        {
            RandomNumbers.For(1, "a"), RandomNumbers.For(2, "a"), RandomNumbers.For(1, "b"), RandomNumbers.For(1, "a", 1), RandomNumbers.For(1, "a", 0, 1),
        }.Select(r => r.Next());
        Assert.Equal(5, first.Distinct().Count());
    }

    /// <summary>Mean 0, variance 1, and 4.55 % beyond two standard deviations (normal table); 5 standard errors allowed.</summary>
    [Fact]
    public void Normal_ManyDraws_HasNormalMoments()
    {
        const int draws = 200_000;
        var random = RandomNumbers.For(7, "moments");
        double sum = 0, squares = 0;
        var outside = 0;
        for (var i = 0; i < draws; i++)
        {
            var value = random.Normal();
            sum += value;
            squares += value * value;
            if (Math.Abs(value) > 2) outside++;
        }

        Assert.InRange(sum / draws, -0.0112, 0.0112);
        Assert.InRange(squares / draws, 1 - 0.0158, 1 + 0.0158);
        Assert.InRange(outside / (double)draws, 0.0455 - 0.0024, 0.0455 + 0.0024);
    }
}
