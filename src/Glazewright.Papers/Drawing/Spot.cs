namespace Glazewright.Papers.Drawing;

/// <summary>A spot on a drawing: metres (x right, y up) in a view, millimetres (x right, y down from the top left) on a sheet.</summary>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>Component-wise sum.</summary>
    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Component-wise difference.</summary>
    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Scaled by a number.</summary>
    public static Spot operator *(double factor, Spot p) => new(factor * p.X, factor * p.Y);

    /// <summary>Scalar product.</summary>
    public double Dot(Spot other) => X * other.X + Y * other.Y;

    /// <summary>Distance from the origin, in the same unit.</summary>
    public double Length() => Math.Sqrt(X * X + Y * Y);

    /// <summary>The same direction with length 1; (1, 0) for the zero vector.</summary>
    public Spot Unit()
    {
        double length = Length();
        return length > 0 ? new(X / length, Y / length) : new(1, 0);
    }
}

/// <summary>An upright box, in mm on a sheet or in metres in a view.</summary>
public readonly record struct Box(double Left, double Top, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => Left + Width;

    /// <summary>The edge at the larger y (the bottom on a sheet).</summary>
    public double Bottom => Top + Height;

    /// <summary>The four corners in order.</summary>
    public IReadOnlyList<Spot> Corners() =>
        [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];
}
