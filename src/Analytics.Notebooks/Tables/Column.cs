namespace Analytics.Notebooks.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Head">Text of the head, without unit.</param>
/// <param name="Numeric">Whether its cells are numbers, set flush right.</param>
/// <param name="Unit">Unit, shown once in the head; empty for none.</param>
public sealed record Column(string Head, bool Numeric = false, string Unit = "")
{
    internal string HeadWithUnit => Unit.Length == 0 ? Head : $"{Head}, {Unit}";
}
