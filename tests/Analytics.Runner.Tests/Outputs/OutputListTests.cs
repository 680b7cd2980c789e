using Analytics.Runner.Outputs;

namespace Analytics.Runner.Tests.Outputs;

public class OutputListTests
{
    [Fact]
    public void Write_SameStream_IsMergedAndOrderKept()
    {
        var list = new OutputList();
        list.Write(false, "a");
        list.Write(false, "b\n");
        list.Write(true, "e");
        list.Write(false, "c");
        list.Write(false, "");
        Assert.Equal([new StreamOutput(false, "ab\n"), new StreamOutput(true, "e"), new StreamOutput(false, "c")], list.Snapshot());
    }

    [Fact]
    public void Replace_KnownKey_KeepsThePlace()
    {
        var list = new OutputList();
        list.Add(Text("one"), "k1");
        list.Add(Text("two"), "k2");
        Assert.True(list.Replace("k1", Text("new")));
        Assert.False(list.Replace("k3", Text("lost")));
        Assert.Equal(["new", "two"], list.Snapshot().Cast<DisplayOutput>().Select(d => d.Form("text/plain")));
    }

    private static DisplayOutput Text(string text) => new([new OutputForm("text/plain", text)], false);
}
