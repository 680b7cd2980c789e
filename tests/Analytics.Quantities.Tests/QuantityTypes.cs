namespace Analytics.Quantities.Tests;

/// <summary>Every quantity of the library, found by reflection: a new one is tested without being listed.</summary>
internal static class QuantityTypes
{
    public static IReadOnlyList<Type> All { get; } =
    [
        .. typeof(IQuantity).Assembly.GetTypes()
            .Where(t => t.IsValueType && typeof(IQuantity).IsAssignableFrom(t))
            .OrderBy(t => t.Name, StringComparer.Ordinal),
    ];

    public static TheoryData<string> Names => new(All.Select(t => t.Name));

    public static IQuantityRules Rules(string name)
        => (IQuantityRules)Activator.CreateInstance(typeof(QuantityRules<>).MakeGenericType(All.Single(t => t.Name == name)))!;
}
