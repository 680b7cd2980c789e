using System.Globalization;
using System.IO.Compression;
using Analytics.Season.Files;

namespace Analytics.Season.Tables;

/// <summary>Refuses what is no workbook, and archives made to fill the memory, before they are opened.</summary>
internal static class WorkbookGuard
{
    private const long LargestInside = 512L * 1024 * 1024;

    // Sheets pack 5 to 30 times; an archive far beyond that was built to overflow.
    private const long LargestRatio = 200;
    private const long RatioCheckedFrom = 16L * 1024 * 1024;
    private const int MostParts = 2000;

    /// <summary>Checks the bytes of a workbook.</summary>
    /// <exception cref="InputFault">Not a workbook, protected, broken or oversized.</exception>
    public static void Check(byte[] bytes)
    {
        if (bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
            throw new InputFault("the workbook is protected by a password, or in the old .xls format.", "Save it as .xlsx without a password.");
        if (!bytes.AsSpan().StartsWith("PK"u8))
            throw new InputFault("the file is named .xlsx but is no workbook.", "Save it from the spreadsheet as .xlsx, or as CSV.");
        try
        {
            using var archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            if (archive.Entries.Count > MostParts) throw Oversized($"{archive.Entries.Count} parts; at most {MostParts} are read");
            CheckSize(archive.Entries.Sum(e => Math.Min(e.Length, LargestInside)), bytes.Length);
            // The sizes an archive states may be false, so they are counted once.
            var buffer = new byte[81920];
            long inside = 0;
            foreach (var entry in archive.Entries)
            {
                using var part = entry.Open();
                for (var read = part.Read(buffer); read > 0; read = part.Read(buffer)) CheckSize(inside += read, bytes.Length);
            }
        }
        catch (Exception error) when (error is InvalidDataException or IOException or NotSupportedException or ArgumentException)
        {
            throw new InputFault("the workbook is damaged: its archive cannot be read.", "Open it in the spreadsheet and save it again as .xlsx.");
        }
    }

    private static void CheckSize(long inside, long packed)
    {
        if (inside >= LargestInside) throw Oversized(string.Create(CultureInfo.InvariantCulture, $"more than {LargestInside / 1048576} MB unpacked"));
        if (inside > RatioCheckedFrom && inside > LargestRatio * packed)
            throw Oversized(string.Create(CultureInfo.InvariantCulture, $"more than {LargestRatio} times its size unpacked"));
    }

    private static InputFault Oversized(string what) => new($"the workbook was not opened: it holds {what}, which no season needs.", "Make a new workbook with the tables only.");
}
