using Analytics.Statistics.Results;

namespace Analytics.Statistics.Tests.Results;

public sealed class ResultSheetTests
{
    private static readonly ResultSheet s_sheet = new(
        "Typical error <jump>", "residual mean square [hopkins2000]",
        [
            new("typical error", 1.23456, "cm") { Interval = new(0.9, 1.8), DegreesOfFreedom = 18, StandardError = 0.2 },
            new("change in the mean", -0.04, "cm"),
            new("limit", null) { Note = "none: one trial" },
        ]) { Basis = "10 athletes, 3 trials", Remarks = ["Read it & think."] };

    private sealed record Sample : Result
    {
        public override ResultSheet Sheet() => s_sheet;
    }

    [Fact]
    public void Text_names_every_figure_its_doubt_and_the_method() => Assert.Equal(
        """
        Typical error <jump>
                                  value             interval      SE  df  note
          typical error        1.235 cm  0.9000 to 1.800 (95 %)  0.2000  18
          change in the mean  −0.04000 cm
          limit                       –                                  none: one trial
        Method: residual mean square [hopkins2000]
        From: 10 athletes, 3 trials
        Read it & think.
        """.ReplaceLineEndings("\n").Split('\n').Select(l => string.Join(' ', l.Split(' ', StringSplitOptions.RemoveEmptyEntries))),
        new Sample().ToString().Split('\n').Select(l => string.Join(' ', l.Split(' ', StringSplitOptions.RemoveEmptyEntries))));

    [Fact]
    public void Table_has_a_caption_scoped_heads_and_escaped_text()
    {
        var html = s_sheet.ToHtml();
        Assert.Contains("<caption>Typical error &lt;jump&gt;</caption>", html, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\">change in the mean</th><td>−0.04000 cm</td>", html.Replace("&#8722;", "−", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Read it &amp; think.", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_no_line_fills_is_left_out()
        => Assert.DoesNotContain("interval", (s_sheet with { Lines = [new("n", 3)] }).ToText(), StringComparison.Ordinal);

    [Theory]
    [InlineData(0.00001234, "1.234E−5")]
    [InlineData(12345678, "12345678")]
    [InlineData(double.PositiveInfinity, "∞")]
    [InlineData(double.NaN, "–")]
    [InlineData(-2.5, "−2.500")]
    public void Numbers_keep_four_digits(double value, string expected)
        => Assert.Contains($"x {expected}", string.Join(' ', (s_sheet with { Lines = [new("x", value)] }).ToText().Split(' ', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
}
