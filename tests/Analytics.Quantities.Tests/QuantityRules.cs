using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Analytics.Quantities.Tests;

internal sealed class QuantityRules<T> : IQuantityRules where T : struct, IQuantity<T>
{
    // A conversion is one rounding on the way in and one on the way out.
    private const double TwoRoundings = 2.3e-16 * 2;

    private static readonly bool Signed = typeof(T).GetMethod("op_UnaryNegation") is not null;

    private static IReadOnlyList<Door> Doors { get; } =
    [
        .. typeof(T).GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(m => m.Name.StartsWith("From", StringComparison.Ordinal) && m.Name != "FromSi")
            .Select(m => new Door(m, typeof(T).GetProperty(m.Name["From".Length..]))),
    ];

    public void DefaultIsZero()
    {
        Assert.Equal(default, T.Zero);
        Assert.Equal(0, T.Zero.Si);
        Assert.Equal(T.Zero, T.FromSi(-0.0));
        Assert.StartsWith("0", T.FromSi(-0.0).ToString(), StringComparison.Ordinal);
    }

    public void EveryUnitHasOneFactoryAndOneProperty()
    {
        Assert.Equal(T.Zero.SiUnit, T.Units[0].Symbol);
        Assert.Equal(1, T.Units[0].ToSi);
        Assert.Equal(T.Units.Count, T.Units.Select(u => u.Symbol).Distinct().Count());
        Assert.All(Doors, d => Assert.NotNull(d.Property));
        Assert.Equal(
            T.Units.Select(u => Rounded(u.ToSi)).Order(),
            Doors.Select(d => Rounded(d.Make(1).Si)).Order());
    }

    public void EveryUnitComesBack(double number) => Assert.All(Doors, d =>
    {
        Assert.Equal(number, d.Read(d.Make(number)), Math.Abs(number) * TwoRoundings);
        Assert.Equal(d.Make(number).Si, T.FromSi(d.Make(number).Si).Si);
    });

    public void FactoriesRefuse(double number)
    {
        foreach (var door in Doors)
        {
            var error = Assert.Throws<ArgumentOutOfRangeException>(() => door.Make(number));
            Assert.Equal(door.Parameter, error.ParamName);
            Assert.Equal(number, error.ActualValue);
            Assert.Contains("got " + number.ToString(CultureInfo.InvariantCulture), error.Message, StringComparison.Ordinal);
        }

        Assert.Equal("si", Assert.Throws<ArgumentOutOfRangeException>(() => T.FromSi(number)).ParamName);
    }

    public void NegativeIsRefusedOrHasAnOpposite()
    {
        if (!Signed)
        {
            FactoriesRefuse(-0.5);
            Assert.Throws<ArgumentOutOfRangeException>(() => T.FromSi(1) - T.FromSi(2));
            return;
        }

        var negate = typeof(T).GetMethod("op_UnaryNegation")!;
        Assert.Equal(T.FromSi(-2.5), negate.Invoke(null, [T.FromSi(2.5)]));
    }

    public void OverflowIsRefused()
    {
        var most = T.FromSi(double.MaxValue);
        Assert.Throws<ArgumentOutOfRangeException>(() => most + most);
        Assert.Throws<ArgumentOutOfRangeException>(() => most * 2);
        Assert.Throws<ArgumentOutOfRangeException>(() => most / 0);
        Assert.Throws<ArgumentOutOfRangeException>(() => T.FromSi(1) * double.NaN);
        foreach (var door in Doors.Where(d => d.Make(1).Si > 1))
        {
            var error = Assert.Throws<ArgumentOutOfRangeException>(() => door.Make(double.MaxValue));
            Assert.Equal(door.Parameter, error.ParamName);
        }
    }

    public void OrderFollowsTheNumber(double low, double high)
    {
        var (a, b) = (T.FromSi(low), T.FromSi(high));
        Assert.True(a < b && a <= b && b > a && b >= a && a != b);
        Assert.False(a > b || a >= b || b < a || b <= a || a == b);
        Assert.True(a <= T.FromSi(low) && a >= T.FromSi(low));
        Assert.False(a < T.FromSi(low) || a > T.FromSi(low));
        Assert.Equal(-1, Math.Sign(a.CompareTo(b)));
        Assert.Equal(1, Math.Sign(b.CompareTo(a)));
        Assert.Equal(0, a.CompareTo(T.FromSi(low)));
    }

    public void EqualityFollowsTheNumber(double number)
    {
        var (a, b, other) = (T.FromSi(number), T.FromSi(number), T.FromSi(number + 1));
        Assert.True(a == b && a.Equals(b) && a.Equals((object)b) && !(a != b));
        Assert.Equal(a.GetHashCode(), b.GetHashCode());
        Assert.False(a == other || a.Equals(other) || a.Equals(number));
        Assert.Equal(T.Zero.GetHashCode(), T.FromSi(-0.0).GetHashCode());
    }

    public void ArithmeticFollowsTheNumber(double one, double other, double factor)
    {
        var (a, b) = (T.FromSi(one), T.FromSi(other));
        Assert.Equal(one + other, (a + b).Si);
        Assert.Equal(a + b, b + a);
        Assert.Equal(one, (a + T.Zero).Si);
        Assert.Equal(Math.Max(one, other) - Math.Min(one, other), ((a > b ? a : b) - (a > b ? b : a)).Si);
        Assert.Equal(one * factor, (a * factor).Si);
        Assert.Equal(a * factor, Invoke("op_Multiply", factor, a));
        Assert.Equal(one / factor, (a / factor).Si);
        Assert.Equal(one / other, Invoke("op_Division", a, b));
    }

    public void RatioByZeroIsRefused()
    {
        var error = Assert.Throws<TargetInvocationException>(() => Invoke("op_Division", T.FromSi(3), T.Zero));
        var cause = Assert.IsType<ArgumentOutOfRangeException>(error.InnerException);
        Assert.Equal("right", cause.ParamName);
        Assert.Contains("got 0", cause.Message, StringComparison.Ordinal);
    }

    public void TextIsInvariantWithUnit()
    {
        Assert.Equal($"1234.5{Gap(T.Units[0])}", T.FromSi(1234.5).ToString());
        Assert.All(T.Units, unit =>
        {
            var value = T.FromSi(unit.SiOf(7.25));
            Assert.Equal($"7.25{Gap(unit)}", value.ToString(unit.Symbol, null));
            Assert.Equal($"7.3{Gap(unit)}", value.ToString(unit.Symbol + "|0.0", null));
            Assert.Equal($"7,25{Gap(unit)}", value.ToString(unit.Symbol, DecimalComma.Culture));
        });
    }

    public void UnknownUnitInAFormatIsRefused()
    {
        var error = Assert.Throws<FormatException>(() => T.Zero.ToString("stone", null));
        Assert.Contains("'stone'", error.Message, StringComparison.Ordinal);
        Assert.All(T.Units, u => Assert.Contains(u.Symbol, error.Message, StringComparison.Ordinal));
    }

    public void IsOneDoubleWithoutConversions()
    {
        Assert.Equal(sizeof(double), Unsafe.SizeOf<T>());
        Assert.DoesNotContain(typeof(T).GetMethods(), m => m.Name is "op_Implicit" or "op_Explicit");
        Assert.DoesNotContain(typeof(T).GetProperties(), p => p.SetMethod is not null);
        Assert.Empty(typeof(T).GetConstructors());
        Assert.True(typeof(T).IsDefined(typeof(IsReadOnlyAttribute)));
    }

    private static object? Invoke(string name, object left, object right)
        => typeof(T).GetMethod(name, [left.GetType(), right.GetType()])!.Invoke(null, [left, right]);

    private static string Gap(Unit unit) => unit.Symbol == "°" ? "°" : " " + unit.Symbol;

    private static double Rounded(double factor) => double.Parse(factor.ToString("E12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private sealed record Door(MethodInfo Factory, PropertyInfo? Property)
    {
        public string Parameter { get; } = Factory.GetParameters().Single().Name!;

        public T Make(double number) => Factory.CreateDelegate<Func<double, T>>()(number);

        public double Read(T quantity) => (double)Property!.GetValue(quantity)!;
    }
}
