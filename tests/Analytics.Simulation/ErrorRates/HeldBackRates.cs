namespace Analytics.Simulation.ErrorRates;

/// <summary>Whether each typing error put in was held back, and whether anything else was.</summary>
public sealed class HeldBackRates
{
    public SortedDictionary<string, Tally> Found { get; } = new(StringComparer.Ordinal);

    /// <summary>Rows held back that hold no error of ours.</summary>
    public int Innocent { get; private set; }

    public int RowsRead { get; private set; }

    public void Add(SeasonChain chain)
    {
        var held = chain.Season.HeldBack.Select(h => (h.File, h.Line)).ToHashSet();
        foreach (var error in chain.Truth.Errors)
        {
            if (!Found.TryGetValue(error.Kind, out var tally)) Found.Add(error.Kind, tally = new Tally());
            tally.Add(chain.Number, held.Remove((error.File, error.Line)));
        }

        Innocent += held.Count;
        RowsRead += chain.Season.RowsRead;
    }
}
