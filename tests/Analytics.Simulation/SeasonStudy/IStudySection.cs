using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy;

/// <summary>
/// One section of docs/season-study.md. To add one: implement this, list it in <see cref="StudySections"/>, regenerate the document.
/// </summary>
public interface IStudySection
{
    /// <summary>Kinds of season it wants to see; empty when it makes its own in <see cref="Run"/>.</summary>
    IReadOnlyList<Scenario> Scenarios { get; }

    /// <summary>
    /// Counts one season. Called in the order of the seasons within a scenario; different scenarios may come at the same time, so what is counted for one
    /// must not touch what is counted for another.
    /// </summary>
    /// <param name="scenario">One of <see cref="Scenarios"/>.</param>
    /// <param name="chain">The season after the library's own chain.</param>
    void Add(Scenario scenario, SeasonChain chain);

    /// <summary>The work of a section that makes its own seasons; called once, before <see cref="Write"/>.</summary>
    /// <param name="seasons">How many.</param>
    /// <param name="seed">Seed of the first; season i has seed + i.</param>
    void Run(int seasons, ulong seed)
    {
    }

    /// <summary>The section in Markdown, its head (<c>## ...</c>) first, with a line end at the end.</summary>
    string Write();
}
