using System.Xml.Linq;

namespace Analytics.Cli.Promoting;

/// <summary>A test that failed.</summary>
internal sealed record FailedTest(string Name, string Message)
{
    /// <summary>Whether it is a place for a figure from outside that nobody has filled in: it fails on purpose. The words are those of the tests' <c>PublishedCheck</c>.</summary>
    public bool IsBlank => Message.StartsWith("Blank check of ", StringComparison.Ordinal);
}

/// <summary>How the tests ended.</summary>
/// <param name="Passed">Tests that passed.</param>
/// <param name="Failed">Tests that failed.</param>
internal sealed record TestResults(int Passed, IReadOnlyList<FailedTest> Failed)
{
    private static readonly XNamespace s_results = "http://microsoft.com/schemas/VisualStudio/TeamTest/2010";

    /// <summary>Reads the file of results that <c>dotnet test --logger trx</c> writes.</summary>
    public static TestResults Read(string file)
    {
        var all = XDocument.Load(file).Descendants(s_results + "UnitTestResult").ToList();
        return new(all.Count(r => (string?)r.Attribute("outcome") == "Passed"),
            [.. all.Where(r => (string?)r.Attribute("outcome") == "Failed").Select(r => new FailedTest((string?)r.Attribute("testName") ?? "", (r.Descendants(s_results + "Message").FirstOrDefault()?.Value ?? "").Trim()))]);
    }
}
