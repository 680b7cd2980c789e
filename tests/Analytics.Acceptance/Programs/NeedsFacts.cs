namespace Analytics.Acceptance.Programs;

/// <summary>
/// A test that needs a program. Where it is missing the test is skipped and says so; where skips are forbidden
/// (<c>ANALYTICS_NO_SKIPS=1</c>, as in CI) it runs and fails.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public abstract class NeedsFactAttribute : FactAttribute
{
    protected NeedsFactAttribute(string? program, string reason)
    {
        if (program is null && Environment.GetEnvironmentVariable("ANALYTICS_NO_SKIPS") != "1")
            Skip = reason;
    }
}

/// <summary>A test that drives Chromium.</summary>
public sealed class ChromiumFactAttribute()
    : NeedsFactAttribute(Found.Chromium, "Chromium is not installed (apt-get install chromium, or name it in ANALYTICS_CHROMIUM).");

/// <summary>A test that runs a notebook in Jupyter with the .NET (C#) kernel.</summary>
public sealed class JupyterFactAttribute()
    : NeedsFactAttribute(Found.Nbconvert, "Jupyter's nbconvert with the .NET (C#) kernel is not installed (see docs/running.md).");

/// <summary>A test that asks nbformat whether a notebook is valid.</summary>
public sealed class NbformatFactAttribute()
    : NeedsFactAttribute(Found.PythonWithNbformat, "Python with nbformat is not installed (apt-get install python3-nbformat).");
