using Analytics.Cli.Promoting;

namespace Analytics.Cli.Tests.Promoting;

public class TestResultsTests
{
    // Cut from a file that dotnet test wrote.
    private const string Written = """
        <?xml version="1.0" encoding="utf-8"?>
        <TestRun id="1" xmlns="http://microsoft.com/schemas/VisualStudio/TeamTest/2010">
          <Results>
            <UnitTestResult testName="A.Good" outcome="Passed" />
            <UnitTestResult testName="A.Left" outcome="NotExecuted" />
            <UnitTestResult testName="A.Bad" outcome="Failed"><Output><ErrorInfo><Message>Assert.Equal() Failure: Blank check of nothing</Message></ErrorInfo></Output></UnitTestResult>
            <UnitTestResult testName="A.Blank" outcome="Failed"><Output><ErrorInfo><Message>Blank check of x: look for a figure</Message></ErrorInfo></Output></UnitTestResult>
          </Results>
        </TestRun>
        """;

    [Fact]
    public void Read_Results_TellsBlankFromFailed()
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("r.trx"), Written);
        var results = TestResults.Read(folder.File("r.trx"));
        Assert.Equal(1, results.Passed);
        Assert.Equal([("A.Bad", false), ("A.Blank", true)], results.Failed.Select(f => (f.Name, f.IsBlank)));
    }
}
