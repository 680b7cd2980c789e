using Analytics.Statistics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Analytics.Statistics.Monitoring;

/// <summary>Mean run length of run rules used together, exactly: a Markov chain over what the rules remember of the last points [champwoodall1987].</summary>
internal static class RunRuleLength
{
    private const int MostStates = 3000;

    public static double Of(IReadOnlyList<RunRule> rules)
    {
        var zones = Zones(rules);
        // A state is, for each rule and each side, which of the last points still count.
        var numbers = new Dictionary<string, int>();
        var states = new List<uint[]>();
        var moves = new List<(int From, int To, double Chance)>();
        Number(new uint[2 * rules.Count]);
        for (var from = 0; from < states.Count; from++)
        {
            foreach (var (place, chance) in zones)
            {
                if (Next(rules, states[from], place) is { } next) moves.Add((from, Number(next), chance));
            }
        }

        // Mean lengths from every state: one point more than from the next, unless it signals.
        var system = Matrix<double>.Build.DenseIdentity(states.Count);
        foreach (var (from, to, chance) in moves) system[from, to] -= chance;
        return system.Solve(Vector<double>.Build.Dense(states.Count, 1))[0];

        int Number(uint[] state)
        {
            var key = string.Join(',', state);
            if (numbers.TryGetValue(key, out var number)) return number;
            if (states.Count == MostStates) throw new NotSupportedException($"These {rules.Count} rules together remember more than {MostStates} different pasts; ask for fewer rules or shorter windows.");
            states.Add(state);
            numbers.Add(key, states.Count - 1);
            return states.Count - 1;
        }
    }

    // The axis cut wherever a rule asks; a point in the middle of a zone stands for it.
    private static List<(double Place, double Chance)> Zones(IReadOnlyList<RunRule> rules)
    {
        double[] edges = [.. rules.SelectMany(r => new[] { -r.Beyond, r.Beyond }).Distinct().Order()];
        List<(double, double)> zones = [(edges[0] - 1, NormalLaw.Cdf(edges[0])), (edges[^1] + 1, NormalLaw.Cdf(-edges[^1]))];
        for (var z = 1; z < edges.Length; z++) zones.Add(((edges[z - 1] + edges[z]) / 2, NormalLaw.Cdf(edges[z]) - NormalLaw.Cdf(edges[z - 1])));
        return zones;
    }

    // The state after one more point; null when a rule signals.
    private static uint[]? Next(IReadOnlyList<RunRule> rules, uint[] state, double place)
    {
        var next = new uint[state.Length];
        for (var i = 0; i < state.Length; i++)
        {
            var rule = rules[i / 2];
            var counts = (i % 2 == 0 ? place : -place) > rule.Beyond;
            var window = (state[i] << 1) | (counts ? 1u : 0);
            if (uint.PopCount(window) >= rule.Needed) return null;
            next[i] = Relevant(window, rule);
        }

        return next;
    }

    // Bit a − 1 is the point of age a. It matters only if with all points to come before it drops out the rule could still signal.
    private static uint Relevant(uint window, RunRule rule)
    {
        uint kept = 0, ones = 0;
        for (var age = 1; age < rule.Window; age++)
        {
            if ((window >> (age - 1) & 1) == 0) continue;
            ones++;
            if (ones + rule.Window - age >= rule.Needed) kept |= 1u << (age - 1);
        }

        return kept;
    }
}
