namespace Analytics.Simulation.Clips.Motion;

/// <summary>A place or an arrow in the plane of the run: x forward, y up, m.</summary>
public readonly record struct Point(double X, double Y)
{
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(double factor, Point a) => new(factor * a.X, factor * a.Y);

    /// <summary>From the lower end of a segment to its upper end when it leans forward from upright by an angle.</summary>
    public static Point Up(double leanDegrees, double length)
        => new(length * Math.Sin(leanDegrees * Math.PI / 180), length * Math.Cos(leanDegrees * Math.PI / 180));
}
