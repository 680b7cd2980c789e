using Analytics.Runner.Running;

namespace Analytics.Runner.Tests.Running;

/// <summary>Hears how a run goes and keeps nothing.</summary>
internal sealed class Silent : IRunProgress
{
    public void CellStarts(string label, int index, int count)
    {
    }

    public void Writing()
    {
    }
}
