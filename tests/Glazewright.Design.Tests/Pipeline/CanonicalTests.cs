using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;

namespace Glazewright.Design.Tests.Pipeline;

public class CanonicalTests
{
    private abstract record Shape
    {
        public sealed record Round(double RadiusM) : Shape;

        public sealed record Square(double RadiusM) : Shape;
    }

    private sealed record Holder(Shape Shape, EqList<string> Names, int? Count);

    private sealed record Beside(int Count)
    {
        public double? HungKg { get; init; }

        public int Twice => 2 * Count;
    }

    // A door's hung weight is set beside its constructor: two jobs that differ in it alone once had one key.
    [Fact]
    public void What_is_set_beside_the_constructor_counts()
    {
        Assert.NotEqual(Canonical.Hash(new Beside(1)), Canonical.Hash(new Beside(1) { HungKg = 80 }));
        Assert.NotEqual(Canonical.Hash(new Beside(1) { HungKg = 81 }), Canonical.Hash(new Beside(1) { HungKg = 80 }));
        Assert.Equal(Canonical.Hash(new Beside(1) { HungKg = 80 }), Canonical.Hash(new Beside(1) { HungKg = 80 }));
    }

    private sealed record Bad(double[] ValuesM);

    [Fact]
    public void Equal_records_have_equal_hashes_and_any_difference_shows()
    {
        Holder a = new(new Shape.Round(1), ["x", "y"], 3);
        Assert.Equal(Canonical.Hash(a), Canonical.Hash(a with { Names = ["x", "y"] }));
        Assert.NotEqual(Canonical.Hash(a), Canonical.Hash(a with { Shape = new Shape.Square(1) }));
        Assert.NotEqual(Canonical.Hash(a), Canonical.Hash(a with { Names = ["xy"] }));
        Assert.NotEqual(Canonical.Hash(a), Canonical.Hash(a with { Names = ["y", "x"] }));
        Assert.NotEqual(Canonical.Hash(a), Canonical.Hash(a with { Count = null }));
        Assert.NotEqual(Canonical.Hash(0.0), Canonical.Hash(-0.0));
    }

    [Fact]
    public void Arrays_are_refused_because_they_are_not_values() =>
        Assert.Throws<NotSupportedException>(() => Canonical.Hash(new Bad([1])));

    [Fact]
    public void Lists_are_equal_when_their_elements_are()
    {
        EqList<double> a = [1, 2];
        EqList<double> b = [1, 2];
        Assert.Equal(a, b);
        Assert.Equal(a.GetHashCode(), b.GetHashCode());
        Assert.NotEqual(a, [2, 1]);
    }
}
