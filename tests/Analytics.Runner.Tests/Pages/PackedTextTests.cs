using System.Globalization;
using Analytics.Runner.Pages;

namespace Analytics.Runner.Tests.Pages;

public class PackedTextTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(1000)]
    public void Encode_AnyBytes_UnpackToTheSame(int length)
    {
        var bytes = new byte[length];
        new Random(7).NextBytes(bytes);
        Assert.Equal(bytes, Unpack(PackedText.Encode(bytes)));
        Assert.Equal(bytes, PackedText.Decode(PackedText.Encode(bytes)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("12")]
    [InlineData("x ##")]
    [InlineData("9 ####")]
    [InlineData("999999999 ##")]
    [InlineData("1 # ")]
    [InlineData("1 <#")]
    public void Decode_SomethingElse_IsRefused(string text) => Assert.Throws<FormatException>(() => PackedText.Decode(text));

    [Fact]
    public void ChartScript_PackedSource_GivesTheTextAndTravelsAsItsBytes()
    {
        const string Text = "plötly </script> <!-- \u2028 done";
        var zipped = Zipped.Bytes(Text);
        var script = new ChartScript(() => zipped, "a library");
        Assert.Equal(Text, script.Text);
        Assert.Equal(zipped, Unpack(script.Packed));
    }

    [Fact]
    public void Encode_EveryBytePair_UsesOnlyPrintableCharactersAndNoAngleBracket()
    {
        var bytes = Enumerable.Range(0, 65536).SelectMany(i => new[] { (byte)i, (byte)(i >> 8) }).ToArray();
        Assert.DoesNotMatch(@"[^ #-;=-~]", PackedText.Encode(bytes));
    }

    // Written from the description of the format, not from the encoder: length, a space, pairs of digits.
    private static byte[] Unpack(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        var bits = text[(space + 1)..].Chunk(2).SelectMany(pair =>
        {
            var value = (Digit(pair[0]) * 91) + Digit(pair[1]);
            return Enumerable.Range(0, 13).Select(i => (value >> i) & 1);
        }).ToArray();
        var length = int.Parse(text[..space], CultureInfo.InvariantCulture);
        return [.. Enumerable.Range(0, length).Select(i => (byte)Enumerable.Range(0, 8).Sum(b => bits[(i * 8) + b] << b))];
    }

    private static int Digit(char c) => c == '~' ? '<' - '#' : c - '#';
}
