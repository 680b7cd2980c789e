namespace Analytics.Quantities;

/// <summary>A unit of measure: its symbol and how many SI units it makes.</summary>
/// <param name="Symbol">Symbol as written after a number, for example <c>lb</c>.</param>
/// <param name="ToSi">SI units in one of this unit.</param>
public sealed record Unit(string Symbol, double ToSi);
