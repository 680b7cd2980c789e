using System.Reflection;

namespace Analytics.Quantities.Tests;

/// <summary>A product or quotient of two kinds of quantity, found by reflection.</summary>
internal sealed record CrossOperator(MethodInfo Method)
{
    public static IReadOnlyList<CrossOperator> All { get; } =
    [
        .. QuantityTypes.All
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .Where(m => m.Name is "op_Multiply" or "op_Division" && m.GetParameters() is [var l, var r] && l.ParameterType != r.ParameterType
                && IsQuantity(l.ParameterType) && IsQuantity(r.ParameterType))
            .Select(m => new CrossOperator(m))
            .OrderBy(o => o.ToString(), StringComparer.Ordinal),
    ];

    public bool IsProduct => Method.Name == "op_Multiply";

    public Type Left => Method.GetParameters()[0].ParameterType;

    public Type Right => Method.GetParameters()[1].ParameterType;

    public Type Result => Method.ReturnType;

    public Dimension ExpectedDimension()
        => IsProduct ? Dimension.Of(Left).Times(Dimension.Of(Right)) : Dimension.Of(Left).Over(Dimension.Of(Right));

    public double Apply(double left, double right)
        => ((IQuantity)Method.Invoke(null, [Make(Left, left), Make(Right, right)])!).Si;

    public override string ToString() => $"{Left.Name} {(IsProduct ? '*' : '/')} {Right.Name} = {Result.Name}";

    private static bool IsQuantity(Type type) => typeof(IQuantity).IsAssignableFrom(type);

    private static object Make(Type quantity, double si) => quantity.GetMethod("FromSi")!.Invoke(null, [si])!;
}
