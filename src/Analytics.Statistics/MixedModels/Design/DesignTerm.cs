namespace Analytics.Statistics.MixedModels.Design;

/// <summary>A term of the fixed effects: named columns, and the same columns at a point that was not measured.</summary>
internal abstract record DesignTerm(string Name)
{
    public abstract IReadOnlyList<string> ColumnNames { get; }

    public abstract IReadOnlyList<double[]> Columns { get; }

    public abstract double[] At(ModelPoint point);
}

/// <summary>The column of ones.</summary>
internal sealed record InterceptTerm(int Rows) : DesignTerm(ModelDesign.InterceptName)
{
    public override IReadOnlyList<string> ColumnNames => [Name];

    public override IReadOnlyList<double[]> Columns { get; } = [[.. Enumerable.Repeat(1.0, Rows)]];

    public override double[] At(ModelPoint point) => [1];
}

/// <summary>A number a row.</summary>
internal sealed record CovariateTerm(string Name, double[] Values) : DesignTerm(Name)
{
    public override IReadOnlyList<string> ColumnNames => [Name];

    public override IReadOnlyList<double[]> Columns => [Values];

    public override double[] At(ModelPoint point) => [point.Number(Name)];
}

/// <summary>A label a row: one column of 0 and 1 for each level shown.</summary>
internal sealed record FactorTerm(string Name, string[] Values, IReadOnlyList<string> AllLevels, IReadOnlyList<string> Shown) : DesignTerm(Name)
{
    public override IReadOnlyList<string> ColumnNames { get; } = [.. Shown.Select(l => $"{Name}: {l}")];

    public override IReadOnlyList<double[]> Columns { get; } =
        [.. Shown.Select(l => Array.ConvertAll(Values, v => v == l ? 1.0 : 0))];

    public override double[] At(ModelPoint point)
    {
        var level = point.Level(Name);
        if (!AllLevels.Contains(level))
            throw new ArgumentException($"'{level}' is no level of '{Name}'; allowed: {string.Join(", ", AllLevels)}.", nameof(point));
        return [.. Shown.Select(l => l == level ? 1.0 : 0)];
    }
}

/// <summary>All products of the columns of two terms.</summary>
internal sealed record ProductTerm(DesignTerm First, DesignTerm Second) : DesignTerm($"{First.Name} × {Second.Name}")
{
    public override IReadOnlyList<string> ColumnNames { get; } =
        [.. First.ColumnNames.SelectMany(a => Second.ColumnNames.Select(b => $"{a} × {b}"))];

    public override IReadOnlyList<double[]> Columns { get; } =
        [.. First.Columns.SelectMany(a => Second.Columns.Select(b => a.Zip(b, (x, y) => x * y).ToArray()))];

    public override double[] At(ModelPoint point)
    {
        var second = Second.At(point);
        return [.. First.At(point).SelectMany(a => second.Select(b => a * b))];
    }
}
