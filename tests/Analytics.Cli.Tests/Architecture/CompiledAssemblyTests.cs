using System.Globalization;

namespace Analytics.Cli.Tests.Architecture;

/// <summary>The reader must see what the architecture tests forbid; it is shown code that does each of those things.</summary>
public class CompiledAssemblyTests
{
    private static readonly CompiledAssembly Tests = CompiledAssembly.Read("Analytics.Cli.Tests");

    [Theory]
    [InlineData("System.Console", "WriteLine", "String")]
    [InlineData("System.DateTime", "get_UtcNow", "")]
    [InlineData("System.IO.File", "Exists", "String")]
    [InlineData("System.Globalization.CultureInfo", "get_CurrentCulture", "")]
    [InlineData("System.Random", ".ctor", "")]
    [InlineData("System.Double", "ToString", "")]
    public void Members_ForbiddenCall_IsSeen(string type, string name, string parameters)
    {
        var call = Assert.Single(Tests.Members, m => m == new UsedMember(type, name, parameters));
        Assert.True(OutsideWorld.Touches(call), call.ToString());
    }

    [Fact]
    public void CultureBoundText_OnlyTheTextWithoutCulture_IsSeen()
    {
        var seen = Tests.CultureBoundText.Where(m => m.Contains(nameof(Forbidden), StringComparison.Ordinal));
        Assert.Equal(["Bound", "BoundAfterASwitch"], seen.Select(m => m.Split('.', '(')[^2]));
    }

    [Fact]
    public void Touches_OrdinaryCall_IsLeftAlone()
        => Assert.False(OutsideWorld.Touches(new("System.Double", "ToString", "String, System.IFormatProvider")));

    private static class Forbidden
    {
        public static void World(string path, double x)
        {
            Console.WriteLine(path);
            if (File.Exists(path) && CultureInfo.CurrentCulture.Name == path && DateTime.UtcNow.Year == new Random().Next())
#pragma warning disable CA1305 // the very thing the reader must see
                Console.WriteLine(x.ToString());
#pragma warning restore CA1305
        }

        public static string Bound(double x) => $"{x:0.0}";

        public static string BoundAfterASwitch(int kind, double x)
        {
            var name = kind switch { 0 => "a", 1 => "b", 2 => "c", 3 => "d", 4 => "e", 5 => "f", _ => "g" };
            return $"{name} {x:0.0}";
        }

        public static string Named(double x, string name) => string.Create(CultureInfo.InvariantCulture, $"{x:0.0}") + $"{name} {name.Length:0}";
    }
}
