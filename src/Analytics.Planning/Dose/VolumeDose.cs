using Analytics.Planning.Loads;
using Analytics.Planning.Plans;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Dose;

/// <summary>Volume-load of the working sets, where loads are known.</summary>
internal static class VolumeDose
{
    public static IEnumerable<DoseLine> Of(PlayerSession session, Func<PlannedItem, Prescription> loads)
    {
        foreach (var item in session.Items)
        {
            var prescription = loads(item);
            if (prescription.Working.Count == 0) continue;
            yield return new()
            {
                Session = session.Slot,
                Subject = item.Exercise.Name,
                What = "volume-load",
                Amount = Kilograms(item, prescription),
                Unit = "kg",
                Source = SetScheme.CommonPractice,
                Note = item.Exercise.Implement == "dumbbell" ? "load of one hand" : null,
            };
        }
    }

    /// <summary>Σ repetitions × load over the working sets, kg; both sides counted, warm-up not.</summary>
    public static double Kilograms(PlannedItem item, Prescription prescription)
        => prescription.Working.Sum(l => item.Scheme.Repetitions * DoseCount.Sides(item.Exercise) * l.Kilograms);
}
