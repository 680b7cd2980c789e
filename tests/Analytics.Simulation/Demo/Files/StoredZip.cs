using System.Buffers.Binary;
using System.Text;

namespace Analytics.Simulation.Demo.Files;

/// <summary>
/// A ZIP archive without compression and with a fixed time: the platform's own writer would put the operating
/// system and the compressor's version into the bytes.
/// </summary>
public static class StoredZip
{
    private const ushort Version = 20, Utf8Names = 1 << 11;

    // 1 January 2026, 00:00, in the format's two 16-bit fields.
    private const ushort Time = 0, Date = (2026 - 1980) << 9 | 1 << 5 | 1;

    public static byte[] Write(IReadOnlyList<(string Path, string Text)> parts)
    {
        using var archive = new MemoryStream();
        using var directory = new MemoryStream();
        foreach (var (path, text) in parts)
        {
            var name = Encoding.UTF8.GetBytes(path);
            var data = Encoding.UTF8.GetBytes(text);
            var offset = (uint)archive.Position;
            var common = Fields(Version, Utf8Names, 0, Time, Date, Crc32(data), (uint)data.Length, (uint)data.Length, (ushort)name.Length, (ushort)0);
            archive.Write([.. Fields(0x04034b50u), .. common]);
            archive.Write(name);
            archive.Write(data);
            directory.Write([.. Fields(0x02014b50u, Version), .. common, .. Fields(0, 0, 0, 0u, offset)]);
            directory.Write(name);
        }

        var start = (uint)archive.Position;
        archive.Write(directory.ToArray());
        var count = (ushort)parts.Count;
        archive.Write(Fields(0x06054b50u, 0, 0, count, count, (uint)directory.Length, start, 0));
        return archive.ToArray();
    }

    /// <summary>CRC-32 of ISO 3309 (polynomial 0xEDB88320, reflected).</summary>
    public static uint Crc32(ReadOnlySpan<byte> data)
    {
        var crc = uint.MaxValue;
        foreach (var value in data)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++) crc = (crc >> 1) ^ ((crc & 1) * 0xEDB88320);
        }

        return ~crc;
    }

    /// <summary>Little-endian fields: 4 bytes for an unsigned int, 2 for anything else.</summary>
    private static byte[] Fields(params ReadOnlySpan<object> values)
    {
        using var bytes = new MemoryStream();
        Span<byte> field = stackalloc byte[4];
        foreach (var value in values)
        {
            if (value is uint wide)
            {
                BinaryPrimitives.WriteUInt32LittleEndian(field, wide);
                bytes.Write(field);
            }
            else
            {
                BinaryPrimitives.WriteUInt16LittleEndian(field, Convert.ToUInt16(value, System.Globalization.CultureInfo.InvariantCulture));
                bytes.Write(field[..2]);
            }
        }

        return bytes.ToArray();
    }
}
