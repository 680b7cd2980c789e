using System.Globalization;
using Analytics.Statistics.MixedModels.Algebra;

namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>Whether the data can answer at all; each no says what, how many, and what to do.</summary>
internal static class SolverChecks
{
    public static (MixedEnding Ending, string Words)? BeforeFitting(ModelDesign design, GroupNumbers groups)
    {
        var (rows, p, q) = (design.Rows, design.FixedNames.Count, design.RandomNames.Count);
        if (rows <= p)
            return (MixedEnding.TooFewRows, $"{rows} rows for {p} fixed effects leave no degree of freedom; at least {p + 1} rows are needed.");
        if (q == 0) return null;
        if (groups.Names.Count < 2)
            return (MixedEnding.TooFewGroups, $"There is one {design.GroupName} only ('{groups.Names[0]}'); at least 2 are needed to see how they differ.");
        var most = groups.Sizes.Max();
        return most <= q
            ? (MixedEnding.MoreEffectsThanRows,
                $"No {design.GroupName} has more than {most} {(most == 1 ? "row" : "rows")}; with {q} random {(q == 1 ? "effect" : "effects")} ({string.Join(", ", design.RandomNames)}) some must have {q + 1} or more, else error and {design.GroupName} cannot be told apart.")
            : null;
    }

    public static string NoVariation(ModelDesign design) => design.Response.Distinct().Count() == 1
        ? FormattableString.Invariant($"All {design.Rows} values of {design.ResponseName} are {design.Response[0]}; a model needs some spread.")
        : $"The fixed effects give every value of {design.ResponseName} to the last digit; no error is left to estimate.";

    /// <summary>Names the column that adds nothing, and those it is made of.</summary>
    public static string Collinear(string kind, IReadOnlyList<string> names, OrthonormalColumns columns, IReadOnlyList<double[]> values)
    {
        var column = columns.Dependent;
        var size = values[column].Max(Math.Abs);
        if (size == 0) return $"The {kind} effect '{names[column]}' is 0 in every row; take it out.";
        var parts = Enumerable.Range(0, column)
            .Where(i => Math.Abs(columns.DependsOn[i]) * values[i].Max(Math.Abs) > 1e-6 * size)
            .Select(i => $"{columns.DependsOn[i].ToString("0.####", CultureInfo.InvariantCulture)} × '{names[i]}'");
        return $"The {kind} effect '{names[column]}' adds nothing: in these rows it is {string.Join(" + ", parts)}. Take one of them out.";
    }

    public static (MixedEnding Ending, string Words)? AfterReducing(ModelDesign design, GroupReduction data, double largest)
    {
        if (data.Q == 0) return null;
        var inside = data.Patterns.Sum(p => p.Count * p.Rows);
        if (inside >= data.Rows)
        {
            return (MixedEnding.MoreEffectsThanRows,
                $"The random effects ({string.Join(", ", design.RandomNames)}) can give every one of the {data.Rows} rows exactly; repeats of a {design.GroupName} at the same point, or fewer random effects, are needed.");
        }

        return WithinResidual(data) <= 1e-28 * data.Rows * Math.Max(1, largest * largest)
            ? (MixedEnding.NoErrorLeft,
                $"Within every {design.GroupName} the fixed and random effects give each value to the last digit; without any error left the variances have no estimate.")
            : null;
    }

    /// <summary>Names the variance that the data hold no information on, by the expected information at a middling point; null when there is none such.</summary>
    public static string? NotIdentified(ModelDesign design, VarianceCriterion criterion, FactorMap map)
    {
        var q = criterion.Data.Q;
        if (q == 0) return null;
        var identity = new double[q * q];
        for (var k = 0; k < q; k++) identity[(k * q) + k] = 1;
        if (!criterion.Evaluate(identity)) return "The fixed effects take up every difference within the groups; no error is left to estimate. Take some out.";
        var by = CriterionDerivatives.At(criterion);
        var used = Enumerable.Range(0, by.Pairs.Length).Where(a => design.IsCorrelated || by.Pairs[a].I == by.Pairs[a].J).ToArray();
        var n = used.Length + 1;
        var information = new double[n * n];
        for (var a = 0; a < used.Length; a++)
        {
            for (var b = 0; b < used.Length; b++) information[(a * n) + b] = by.InfoV[used[a], used[b]] - by.InfoX[used[a], used[b]];
            information[(a * n) + n - 1] = information[((n - 1) * n) + a] = by.TraceV[used[a]] - by.TraceX[used[a]];
        }

        information[^1] = criterion.Data.Rows - criterion.Data.P;
        return Weakest(information, n) is not { } weakest ? null
            : weakest < used.Length && by.Pairs[used[weakest]] is var (i, j) && i != j
                ? $"The data hold no information on the correlation of '{design.RandomNames[j]}' and '{design.RandomNames[i]}' between {design.GroupName}s: use uncorrelated effects or fewer of them."
                : $"The data hold no information on how {design.GroupName}s differ in '{design.RandomNames[Math.Min(weakest < used.Length ? by.Pairs[used[weakest]].I : 0, q - 1)]}' apart from error: the fixed effects take up those differences, or too few {design.GroupName}s have repeats. Take out fixed effects that are constant within a {design.GroupName}, or this random effect.";
    }

    private static int? Weakest(double[] information, int n)
    {
        // Against the number of degrees of freedom: a variance with less than a billionth of one has none.
        for (var i = 0; i < n; i++)
            if (!(information[(i * n) + i] > 1e-9)) return i;
        var scaled = new double[n * n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++) scaled[(i * n) + j] = information[(i * n) + j] / Math.Sqrt(information[(i * n) + i] * information[(j * n) + j]);
        var eigen = SymmetricEigen.Of(scaled, n);
        var least = Array.IndexOf(eigen.Values, eigen.Values.Min());
        if (eigen.Values[least] > 1e-10) return null;
        return Enumerable.Range(0, n).MaxBy(i => Math.Abs(eigen.Vectors[(i * n) + least]));
    }

    // What the fixed effects leave of the sums of squares outside the random designs.
    private static double WithinResidual(GroupReduction data)
    {
        var n = data.P + 1;
        var a = (double[])data.Within.Clone();
        for (var j = 0; j < n - 1; j++)
        {
            var pivot = a[(j * n) + j];
            if (pivot < 1e-12) continue;
            for (var i = j + 1; i < n; i++)
            {
                var factor = a[(i * n) + j] / pivot;
                for (var k = j + 1; k <= i; k++) a[(i * n) + k] -= factor * a[(k * n) + j];
            }
        }

        return a[^1];
    }
}
