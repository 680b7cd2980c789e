using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

// Models of the NIST Statistical Reference Datasets for non-linear regression, with their derivatives.

internal readonly struct Misra1a : IFitModel
{
    public int ParameterCount => 2;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var fall = Math.Exp(-b[1] * x);
        g[0] = 1 - fall;
        g[1] = b[0] * x * fall;
        return b[0] * (1 - fall);
    }
}

internal readonly struct Misra1b : IFitModel
{
    public int ParameterCount => 2;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var h = 1 + (b[1] * x / 2);
        g[0] = 1 - (1 / (h * h));
        g[1] = b[0] * x / (h * h * h);
        return b[0] * g[0];
    }
}

internal readonly struct Misra1c : IFitModel
{
    public int ParameterCount => 2;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var h = 1 + (2 * b[1] * x);
        g[0] = 1 - (1 / Math.Sqrt(h));
        g[1] = b[0] * x / (h * Math.Sqrt(h));
        return b[0] * g[0];
    }
}

internal readonly struct Misra1d : IFitModel
{
    public int ParameterCount => 2;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var h = 1 + (b[1] * x);
        g[0] = b[1] * x / h;
        g[1] = b[0] * x / (h * h);
        return b[0] * g[0];
    }
}

internal readonly struct Chwirut2 : IFitModel
{
    public int ParameterCount => 3;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var y = Math.Exp(-b[0] * x) / (b[1] + (b[2] * x));
        g[0] = -x * y;
        g[1] = -y / (b[1] + (b[2] * x));
        g[2] = x * g[1];
        return y;
    }
}

internal readonly struct DanWood : IFitModel
{
    public int ParameterCount => 2;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        g[0] = Math.Pow(x, b[1]);
        g[1] = b[0] * g[0] * Math.Log(x);
        return b[0] * g[0];
    }
}

internal readonly struct Mgh09 : IFitModel
{
    public int ParameterCount => 4;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var top = (x * x) + (b[1] * x);
        var bottom = (x * x) + (b[2] * x) + b[3];
        var y = b[0] * top / bottom;
        g[0] = top / bottom;
        g[1] = b[0] * x / bottom;
        g[2] = -y * x / bottom;
        g[3] = -y / bottom;
        return y;
    }
}

internal readonly struct Eckerle4 : IFitModel
{
    public int ParameterCount => 3;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var z = (x - b[2]) / b[1];
        var bell = Math.Exp(-0.5 * z * z) / b[1];
        g[0] = bell;
        g[1] = b[0] * bell * ((z * z) - 1) / b[1];
        g[2] = b[0] * bell * z / b[1];
        return b[0] * bell;
    }
}

/// <summary>Ratio of two cubics, seven parameters.</summary>
internal readonly struct Hahn1 : IFitModel
{
    public int ParameterCount => 7;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var bottom = 1 + (x * (b[4] + (x * (b[5] + (x * b[6])))));
        var y = (b[0] + (x * (b[1] + (x * (b[2] + (x * b[3])))))) / bottom;
        var power = 1.0;
        for (var i = 0; i < 4; i++, power *= x)
        {
            g[i] = power / bottom;
            if (i > 0) g[3 + i] = -y * power / bottom;
        }
        return y;
    }
}
