using Analytics.Season.Cells;

namespace Analytics.Season.Tests.Cells;

/// <summary>Cells that spreadsheets would take for formulas.</summary>
public sealed class SheetCellTests
{
    [Theory]
    [InlineData("back squat", "back squat")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+x", "'+x")]
    [InlineData("-x", "'-x")]
    [InlineData("@x", "'@x")]
    [InlineData("'=x", "''=x")]
    [InlineData("'t Hooft", "'t Hooft")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("=\"a\"", "\"'=\"\"a\"\"\"")]
    [InlineData("\t=x", "\"'\t=x\"")]
    [InlineData("", "")]
    public void Write_Text_IsNoFormula(string text, string cell) => Assert.Equal(cell, SheetCell.Write(text));

    [Theory]
    [InlineData("=1+1")]
    [InlineData("''@x")]
    [InlineData("'t Hooft")]
    [InlineData("plain")]
    [InlineData("-")]
    public void Read_WhatWasWritten_GivesItBack(string text) => Assert.Equal(text, SheetCell.Read(SheetCell.Write(text)));
}
