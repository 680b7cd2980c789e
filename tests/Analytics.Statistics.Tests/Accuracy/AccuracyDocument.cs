using System.Globalization;
using System.Text;
using static Analytics.Statistics.Tests.Accuracy.AccuracyDigits;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Writes docs/accuracy.md from the sections, so that the page can claim nothing that is not checked.</summary>
internal static class AccuracyDocument
{
    public static string Write()
    {
        var books = AccuracyTests.All.GroupBy(s => s.Section)
            .Select(g => new Subject(g.Key, string.Join(", ", g.Select(s => s.Title).Distinct()), AccuracyTests.BookOf(g.Key))).ToList();
        var text = new StringBuilder();
        text.Append(Intro);
        text.Append("## By subject\n\n").Append(Subjects(books));
        text.Append("## Certified summaries\n\n").Append(SummariesIntro).Append(NistTables.Univariate());
        text.Append("## Certified curve fits\n\n").Append(CurvesIntro).Append(NistTables.Curves());
        text.Append("## Published examples\n\n").Append(PublishedIntro).Append(Published(books));
        text.Append("## Rows that differ\n\n").Append(Missed(books));
        text.Append("## Rows held to a coarser difference\n\n").Append(CoarserIntro).Append(Coarser(books));
        text.Append("## Rows left out\n\n").Append(LeftOut(books));
        return text.ToString().TrimEnd('\n') + "\n";
    }

    private const string Intro = """
        # How far the numbers can be trusted

        What the statistics library gives, beside what others give: certified reference sets, printed examples, R, SciPy and 40-digit
        arithmetic. This page is written by the tests from the comparisons themselves; rewrite it with
        `ACCURACY_PAGE=write dotnet test tests/Analytics.Statistics.Tests --filter AccuracyDocument`. The rows with the call or source behind each stand in
        `tests/oracles/statistics/r-and-published.tsv` and `tests/oracles/nist`.

        Digits are decimal digits in agreement, −log₁₀ of the relative difference (of the difference itself where the expected figure is 0), rounded down; a double holds 15 to 16,
        so `≥ 15` is the best a row can show. Processors differ in the last digit: a shown figure may be one off on another machine.


        """;

    private const string SummariesIntro = """
        Univariate sets of the National Institute of Standards and Technology [nist-strd]: digits of the mean, the standard deviation and the correlation of
        each value with the one before. The goal is 14 wherever the data, typed as decimals and held in binary, allow it.


        """;

    private const string CurvesIntro = """
        Non-linear sets of the same institute [niststrd], all that are at hand, from both of its starts, the first far away, with default options.
        The least digits over all parameters and over their standard deviations count; 11 are certified. The goal is 8 and 7.


        """;

    private const string PublishedIntro = """
        Figures as their source prints them, and what the library gives, to one digit more. Where the print is quoted from memory it says so; it then
        holds nothing up, since the row is checked against independent arithmetic as well. A remark stands where the print is not the rounded figure.


        """;

    private const string CoarserIntro = """
        All other rows agree to a relative difference of 1e-8 or better. These are held to less because what they are compared with is coarser, or because
        the data do not carry more; they take no part in the digits of the first table.


        """;

    private static string Subjects(IEnumerable<Subject> subjects) => MarkdownTable.Of(["subject", "rows checked", "least digits", "median digits", "held to less", "left out"],
        subjects.Select(s =>
        {
            var digits = s.Book.Checks.Where(c => c.IsStrict).Select(c => c.Digits).Order().ToList();
            string[] row =
            [
                s.Title, Whole(s.Book.Checks.Count), digits.Count == 0 ? "–" : AtLeast(digits[0]), digits.Count == 0 ? "–" : AtLeast(digits[digits.Count / 2]),
                Whole(s.Book.Checks.Count(c => !c.IsStrict)), Whole(s.Book.NotChecked.Sum(n => n.Rows)),
            ];
            return (IReadOnlyList<string>)row;
        }));

    private static string Published(IEnumerable<Subject> subjects)
    {
        var checks = subjects.SelectMany(s => s.Book.Checks.Select(c => (s.Section, Check: c))).ToLookup(c => (c.Section, c.Check.Row.Case, c.Check.Row.Quantity), c => c.Check);
        return MarkdownTable.Of(["example", "figure", "printed", "computed", "source", "remark"], PrintedFigure.All.Select(figure =>
        {
            var check = checks[(figure.Section, figure.Case, figure.Quantity)].FirstOrDefault();
            string[] row =
            [
                MarkdownTable.Code(figure.Case), MarkdownTable.Code(figure.Quantity), figure.Printed, check is null ? "–" : figure.InItsDigits(check.Actual),
                figure.Source + (figure.Print == "memory" ? ", from memory" : ""), check is null ? "left out, see below" : figure.Remark,
            ];
            return (IReadOnlyList<string>)row;
        }));
    }

    private static string Missed(IEnumerable<Subject> subjects)
    {
        var missed = subjects.SelectMany(s => s.Book.Checks.Where(c => !c.Holds)).ToList();
        return missed.Count == 0 ? "None.\n\n" : string.Concat(missed.Select(c => $"- {c}\n")) + "\n";
    }

    private static string Coarser(IEnumerable<Subject> subjects) => MarkdownTable.Of(["subject", "rows", "why"],
        from subject in subjects
        from reason in subject.Book.Checks.Where(c => !c.IsStrict).GroupBy(c => c.Why)
        select (IReadOnlyList<string>)[subject.Title, Whole(reason.Count()), MarkdownTable.Words(reason.Key)]);

    private static string LeftOut(IEnumerable<Subject> subjects)
    {
        var known = subjects.ToList();
        var rows = from subject in known
                   from reason in subject.Book.NotChecked.GroupBy(n => n.Reason)
                   select (IReadOnlyList<string>)[subject.Title, string.Join(", ", reason.Select(n => $"{MarkdownTable.Code(n.Case)} ({n.Rows})")), MarkdownTable.Words(reason.Key)];
        var unanswered = AccuracyTests.InFile.Where(f => known.All(k => k.Section != f.Section))
            .Select(f => (IReadOnlyList<string>)[$"section {f.Section}", $"all ({f.Rows})", "no class answers for it yet"]);
        return MarkdownTable.Of(["subject", "rows", "why"], rows.Concat(unanswered));
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private sealed record Subject(string Section, string Title, AccuracyBook Book);
}
