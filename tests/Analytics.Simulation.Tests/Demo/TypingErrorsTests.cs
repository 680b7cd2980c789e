using System.Text;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Mess;

namespace Analytics.Simulation.Tests.Demo;

public class TypingErrorsTests
{
    [Theory]
    [InlineData(2026)]
    [InlineData(1)]
    [InlineData(2)]
    public void Make_EverySeed_PutsTenKnownSlipsInTenRowsOfTenAthletes(int seed)
    {
        var season = DemoSeason.Generate((ulong)seed);
        var errors = season.Truth.Errors;
        Assert.Equal(10, errors.Count);
        Assert.Equal(10, errors.Select(e => e.Kind).Distinct().Count());
        Assert.Equal(10, errors.Select(e => e.AthleteId).Distinct().Count());
        Assert.All(errors, e =>
        {
            Assert.NotEqual(e.Meant, e.Written);
            Assert.Equal(e.Written, Cell(season, e));
        });
    }

    [Fact]
    public void Make_UnknownAthlete_NamesNobodyOfTheSquad()
    {
        var truth = DemoSeason.Generate(3).Truth;
        var error = truth.Errors.Single(e => e.Kind == "unknown athlete");
        Assert.DoesNotContain(truth.Players, p => p.Id == error.Written);
    }

    /// <summary>The cell at the place the truth names, read from the file itself.</summary>
    private static string Cell(GeneratedSeason season, TypingError error)
    {
        var parts = error.File.Split('#');
        if (parts.Length == 2) return WorkbookCell(season.Files[parts[0]], parts[1], error);
        var lines = Encoding.UTF8.GetString(season.Files[error.File]).TrimStart('﻿').Replace("\r", "", StringComparison.Ordinal).Split('\n');
        var separator = lines[0].Contains(';', StringComparison.Ordinal) ? ';' : ',';
        return lines[error.Line - 1].Split(separator)[Array.IndexOf(lines[0].Split(separator), error.Column)];
    }

    private static string WorkbookCell(byte[] bytes, string sheet, TypingError error)
    {
        using var reader = SpreadsheetReader.Open(bytes);
        while (reader.Name != sheet) Assert.True(reader.NextResult(), $"no sheet {sheet}");
        var column = -1;
        for (var line = 1; reader.Read(); line++)
        {
            if (line == 1) column = Enumerable.Range(0, reader.FieldCount).First(i => reader.GetString(i) == error.Column);
            if (line == error.Line) return Convert.ToString(reader.GetValue(column), System.Globalization.CultureInfo.InvariantCulture)!;
        }

        throw new InvalidOperationException($"{sheet} has no line {error.Line}");
    }
}
