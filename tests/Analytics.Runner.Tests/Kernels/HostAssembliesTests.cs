using Analytics.Runner.Kernels;

namespace Analytics.Runner.Tests.Kernels;

public sealed class HostAssembliesTests : IDisposable
{
    private readonly TempFolder folder = new();
    private readonly HostAssemblies host;

    public HostAssembliesTests()
    {
        File.WriteAllText(folder.File("Kit.dll"), "");
        host = new HostAssemblies(folder.Path);
    }

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("#r \"../src/bin/Kit.dll\"\nusing Kit;")]
    [InlineData("#r \"Kit.dll\"\nusing Kit;")]
    [InlineData("#r \"C:\\build\\Kit.dll\"\nusing Kit;")]
    public void Redirect_ShippedAssembly_PointsToTheHostsCopy(string source)
        => Assert.Equal($"#r \"{folder.File("Kit.dll")}\"\nusing Kit;", host.Redirect(source));

    [Theory]
    [InlineData("#r \"../other/Own.dll\"")]
    [InlineData("#r \"nuget: Kit.dll\"")]
    [InlineData("var s = \"Kit.dll\";")]
    [InlineData("// see #r \"Kit.dll\"")]
    public void Redirect_AnythingElse_StaysAsItIs(string source) => Assert.Equal(source, host.Redirect(source));
}
