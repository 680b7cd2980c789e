using System.Text;
using ExcelDataReader;

namespace Analytics.Simulation.Tests.Demo;

/// <summary>Opens a workbook with a general spreadsheet reader, which wants the old code pages registered.</summary>
internal static class SpreadsheetReader
{
    static SpreadsheetReader() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    public static IExcelDataReader Open(byte[] bytes) => ExcelReaderFactory.CreateReader(new MemoryStream(bytes));
}
