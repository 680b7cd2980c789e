namespace Analytics.Quantities;

public readonly partial record struct AnyQuantity
{
    /// <summary>From a mass.</summary>
    public static implicit operator AnyQuantity(Mass value) => new(value.Si, Dimensions.Mass);

    /// <summary>From a length.</summary>
    public static implicit operator AnyQuantity(Length value) => new(value.Si, Dimensions.Length);

    /// <summary>From a duration.</summary>
    public static implicit operator AnyQuantity(Duration value) => new(value.Si, Dimensions.Duration);

    /// <summary>From an angle.</summary>
    public static implicit operator AnyQuantity(Angle value) => new(value.Si, Dimensions.Angle);

    /// <summary>From a speed.</summary>
    public static implicit operator AnyQuantity(Speed value) => new(value.Si, Dimensions.Speed);

    /// <summary>From an acceleration.</summary>
    public static implicit operator AnyQuantity(Acceleration value) => new(value.Si, Dimensions.Acceleration);

    /// <summary>From a momentum.</summary>
    public static implicit operator AnyQuantity(Momentum value) => new(value.Si, Dimensions.Momentum);

    /// <summary>From an impulse.</summary>
    public static implicit operator AnyQuantity(Impulse value) => new(value.Si, Dimensions.Impulse);

    /// <summary>From a force.</summary>
    public static implicit operator AnyQuantity(Force value) => new(value.Si, Dimensions.Force);

    /// <summary>From a force per body mass.</summary>
    public static implicit operator AnyQuantity(ForcePerMass value) => new(value.Si, Dimensions.ForcePerMass);

    /// <summary>From an energy.</summary>
    public static implicit operator AnyQuantity(Energy value) => new(value.Si, Dimensions.Energy);

    /// <summary>From a power.</summary>
    public static implicit operator AnyQuantity(Power value) => new(value.Si, Dimensions.Power);

    /// <summary>From a power per body mass.</summary>
    public static implicit operator AnyQuantity(PowerPerMass value) => new(value.Si, Dimensions.PowerPerMass);

    /// <summary>From a frequency.</summary>
    public static implicit operator AnyQuantity(Frequency value) => new(value.Si, Dimensions.Frequency);

    /// <summary>From a bare number.</summary>
    public static implicit operator AnyQuantity(double number) => new(number, Dimension.None);
}
