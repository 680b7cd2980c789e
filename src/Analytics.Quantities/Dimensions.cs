namespace Analytics.Quantities;

/// <summary>Dimensions of this library's quantities.</summary>
internal static class Dimensions
{
    public static readonly Dimension Mass = new(1, 0, 0);
    public static readonly Dimension Length = new(0, 1, 0);
    public static readonly Dimension Duration = new(0, 0, 1);
    public static readonly Dimension Angle = new(0, 0, 0, 1);
    public static readonly Dimension Speed = Length / Duration;
    public static readonly Dimension Acceleration = Speed / Duration;
    public static readonly Dimension Momentum = Mass * Speed;
    public static readonly Dimension Impulse = Momentum;
    public static readonly Dimension Force = Mass * Acceleration;
    public static readonly Dimension ForcePerMass = Acceleration;
    public static readonly Dimension Energy = Force * Length;
    public static readonly Dimension Power = Energy / Duration;
    public static readonly Dimension PowerPerMass = Power / Mass;
    public static readonly Dimension Frequency = Duration.ToPower(-1);
}
