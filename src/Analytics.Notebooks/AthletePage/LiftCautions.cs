using Analytics.Notebooks.Blocks;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The cautions that go with loads, short enough to be read.</summary>
internal static class LiftCautions
{
    public static ReportBlock Block => new Cautions(
        "Local rules, licensed medical staff and your coach come first. Sore, ill, dizzy, or a knock to the head: do not lift, tell them.",
        "Warm up: five to ten easy repetitions, three to five heavier ones, then steps up to the load.",
        "Bench press: one or two trained spotters. Squat: two or three, with safety bars. Collars on. Never spot a clean; learn the safe miss.",
        "Stop on pain, dizziness, lost technique or two misses. Under 18: only with close, qualified supervision.")
    { Title = "Before you lift" };
}
