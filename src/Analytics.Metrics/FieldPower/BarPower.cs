using Analytics.Quantities;

namespace Analytics.Metrics.FieldPower;

/// <summary>
/// Mean power put into the bar during the pull of a clean.
/// </summary>
/// <remarks>
/// <para>P = m·(g·Δh + v²/2)/Δt; m bar with plates (kg), Δh rise of the bar (m), v its speed at the end of the timed rise (m/s, from rest), Δt time (s). Work and energy, in the manner of [garhammer1993].</para>
/// <para><b>The bar only.</b> Power of the bar, of the lifter's body and of both together are three different figures in print, of very different size; they are never compared with each other, and not with jump or stair power. Without v the energy of motion is left out and the figure is low while the bar still moves fast.</para>
/// </remarks>
public static class BarPower
{
    /// <summary>Mean power of the bar over the timed rise.</summary>
    /// <param name="bar">Bar with plates, above 0 kg.</param>
    /// <param name="rise">Vertical rise of the bar, above 0 m.</param>
    /// <param name="time">Time of the rise, above 0 s.</param>
    /// <param name="endSpeed">Vertical bar speed at the end of the rise; null leaves the energy of motion out.</param>
    /// <param name="g">Acceleration of free fall; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static Power Mean(Mass bar, Length rise, Duration time, Speed? endSpeed = null, Acceleration? g = null)
    {
        var lift = Require.Positive(bar, "Bar mass") * Require.Positive(g ?? Gravity.Published, "Gravity", nameof(g)) * Require.Positive(rise, "Bar rise");
        var v = Require.NotNegative(endSpeed ?? Speed.Zero, "Bar speed", nameof(endSpeed)).MetresPerSecond;
        return (lift + Energy.FromJoules(bar.Kilograms * v * v / 2)) / Require.Positive(time, "Pull time");
    }
}
