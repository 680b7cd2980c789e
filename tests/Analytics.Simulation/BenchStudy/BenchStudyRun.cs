using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;

namespace Analytics.Simulation.BenchStudy;

/// <summary>Judges sketches with known truth in many generated squads.</summary>
public static class BenchStudyRun
{
    /// <summary>Does something with every squad, on threads of its own; results in the order of the squads.</summary>
    /// <typeparam name="T">Result.</typeparam>
    /// <param name="squads">How many squads.</param>
    /// <param name="seed">Seed of the first; squad i has seed + i.</param>
    /// <param name="threads">Threads.</param>
    /// <param name="days">Testing days of a squad, by number.</param>
    /// <param name="what">What to do.</param>
    /// <param name="progress">Told how many are done.</param>
    public static IReadOnlyList<T> Each<T>(int squads, ulong seed, int threads, IReadOnlyList<int> days, Func<BenchSeason, T> what, Action<int>? progress = null)
    {
        var (results, next, done) = (new T[squads], -1, 0);
        Exception? failed = null;
        void Work()
        {
            try
            {
                for (var i = Interlocked.Increment(ref next); i < squads && failed is null; i = Interlocked.Increment(ref next))
                {
                    results[i] = what(BenchSeason.Draw(seed + (ulong)i, days));
                    progress?.Invoke(Interlocked.Increment(ref done));
                }
            }
#pragma warning disable CA1031 // Carried to the caller's thread.
            catch (Exception e)
#pragma warning restore CA1031
            {
                failed = e;
            }
        }

        List<Thread> workers = [.. Enumerable.Range(0, threads).Select(_ => new Thread(Work))];
        workers.ForEach(w => w.Start());
        workers.ForEach(w => w.Join());
        return failed is null ? results : throw new InvalidOperationException(failed.Message, failed);
    }

    /// <summary>Every case in one part of a squad.</summary>
    public static IReadOnlyList<BenchOutcome> Judge(BenchSeason season, SquadChoice choice, IReadOnlyList<BenchCase> cases)
    {
        var squad = season.Squad(choice);
        return [.. cases.Select(c => BenchOutcome.Of(c, season, squad))];
    }
}
