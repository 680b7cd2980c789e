namespace Analytics.Simulation.ErrorRates.Grid;

/// <summary>
/// A share counted over draws. A draw may ask several questions at once (all athletes of a squad share its typical error), so the Monte
/// Carlo error treats the draw as the unit: ratio estimate over clusters, which for one question a draw is √(p(1 − p)/N).
/// </summary>
public sealed class RateCount
{
    private double _held, _asked, _heldSquares, _products, _askedSquares;
    private bool _isPlain = true;

    public int Draws { get; private set; }

    public double Asked => _asked;

    /// <summary>Share that held; NaN when nothing was asked.</summary>
    public double Rate => _held / _asked;

    /// <summary>Standard error of <see cref="Rate"/>; NaN with fewer than two draws.</summary>
    public double MonteCarloError
    {
        get
        {
            if (Draws < 2) return double.NaN;
            var p = Rate;
            return Math.Sqrt(Math.Max(0, _heldSquares - 2 * p * _products + p * p * _askedSquares) * Draws / (Draws - 1)) / _asked;
        }
    }

    public void Add(bool held) => Add(new Share(held ? 1 : 0, 1));

    public void Add(Share share)
    {
        Draws++;
        _held += share.Held;
        _asked += share.Asked;
        _heldSquares += share.Held * share.Held;
        _products += share.Held * share.Asked;
        _askedSquares += share.Asked * share.Asked;
        _isPlain &= share is { Asked: 1, Held: 0 or 1 };
    }

    /// <summary>
    /// Distance from a rate known in closed form, in standard errors: for plain yes and no those that rate would have, else those seen.
    /// A rate without error must be met exactly.
    /// </summary>
    public double ErrorsFrom(double closedForm)
    {
        var error = _isPlain ? Math.Sqrt(closedForm * (1 - closedForm) / Draws) : MonteCarloError;
        return error > 0 ? (Rate - closedForm) / error : Rate == closedForm ? 0 : double.PositiveInfinity;
    }
}

/// <summary>What one draw says: so many held of so many asked.</summary>
public readonly record struct Share(double Held, double Asked)
{
    public static implicit operator Share(bool held) => new(held ? 1 : 0, 1);

    public static Share ToShare(bool held) => held;
}
