using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>How a marker jumped.</summary>
public enum JumpKind
{
    /// <summary>One frame out of line.</summary>
    Spike,

    /// <summary>From this frame on the marker stands elsewhere, as when two markers were swapped.</summary>
    Step,
}

/// <summary>A place where a marker moved as no body does.</summary>
/// <param name="Marker">Name of the marker.</param>
/// <param name="Role">Its landmark.</param>
/// <param name="Frame">The frame out of line, or the first after the step.</param>
/// <param name="Kind">Spike or step.</param>
/// <param name="Size">How far it jumped.</param>
public sealed record MarkerJump(string Marker, MarkerRole Role, int Frame, JumpKind Kind, Length Size)
{
    /// <summary>The jump in a sentence with what to do.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"marker '{Marker}' ({Role.InWords()}) jumps {Size.Centimetres:0.#} cm at frame {Frame}{(Kind == JumpKind.Step ? " and stays there" : "")}: digitise that frame again, or leave it empty");
}
