using System.IO.Compression;
using System.Text;
using Analytics.Simulation.Demo.Files;

namespace Analytics.Simulation.Tests.Demo.Files;

public class WorkbookTests
{
    /// <summary>Check value of CRC-32 for the text 123456789 (CRC catalogue, ISO 3309).</summary>
    [Fact]
    public void Crc32_OfNineDigits_IsThePublishedCheckValue()
        => Assert.Equal(0xCBF43926u, StoredZip.Crc32(Encoding.ASCII.GetBytes("123456789")));

    [Fact]
    public void Write_Parts_AreReadBackByThePlatformsZipReader()
    {
        using var archive = new ZipArchive(new MemoryStream(StoredZip.Write([("a/b.txt", "first"), ("ø.txt", "")])));
        Assert.Equal(["a/b.txt", "ø.txt"], archive.Entries.Select(e => e.FullName));
        using var reader = new StreamReader(archive.Entries[0].Open());
        Assert.Equal("first", reader.ReadToEnd());
    }

    [Fact]
    public void Write_NumbersTextAndGaps_AreReadBackByASpreadsheetReader()
    {
        var sheet = new Sheet("body & more", "id", "value");
        sheet.Add("<A>", "1.5");
        sheet.Add("B", null);
        using var reader = SpreadsheetReader.Open(Workbook.Write([sheet]));
        Assert.Equal("body & more", reader.Name);
        Assert.True(reader.Read());
        Assert.Equal("value", reader.GetString(1));
        Assert.True(reader.Read());
        Assert.Equal("<A>", reader.GetString(0));
        Assert.Equal(1.5, reader.GetDouble(1));
        Assert.True(reader.Read());
        Assert.Null(reader.GetValue(1));
    }
}
