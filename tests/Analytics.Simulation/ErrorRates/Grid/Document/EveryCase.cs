using System.Globalization;
using System.Text;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>Every case measured, one line each, for whoever wants to look further than the document.</summary>
public static class EveryCase
{
    public const string Head = "part,name,in_reports,case,nominal,closed_form,measured,standard_error,draws";

    public static string Csv(GridStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var text = new StringBuilder(Head).Append('\n');
        foreach (var r in study.Intervals)
            Line(text, "interval", r.Entry.Name, r.Entry.InReports, r.Cell.ToString(), r.Entry.Nominal, r.ClosedForm, r.Covered.Rate, r.Covered.MonteCarloError, r.Covered.Draws);
        foreach (var r in study.Verdicts)
        {
            Line(text, "clear verdict", r.Entry.Name, false, FormattableString.Invariant($"{r.Case}, changed by {r.TrueChange} TE"),
                r.TrueChange == 0 ? r.Entry.Nominal : null, r.ClosedForm, r.Clear, r.Error(r.Clear), r.Draws);
        }

        foreach (var r in study.Rates)
            Line(text, "rate", r.Entry.Name, false, r.Case.Label, r.Case.Nominal, r.Case.ClosedForm, r.Count.Rate, r.Count.MonteCarloError, r.Count.Draws);
        return text.ToString();
    }

    private static void Line(StringBuilder text, string part, string name, bool inReports, string label, double? nominal, double? closed, double rate, double error, int draws)
        => text.AppendJoin(',', part, Quoted(name), inReports ? "yes" : "no", Quoted(label), Number(nominal), Number(closed), Number(rate), Number(error), draws.ToString(CultureInfo.InvariantCulture)).Append('\n');

    private static string Quoted(string text) => $"\"{text}\"";

    private static string Number(double? value) => value is { } v && double.IsFinite(v) ? v.ToString("0.#####", CultureInfo.InvariantCulture) : "";
}
