using CsCheck;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Tests.Quantities;

/// <summary>What is written is read again as the same value, within the digits written; and nothing typed makes the reader throw.</summary>
public class RoundTripTests
{
    private static readonly QuantityKind[] s_kinds = Enum.GetValues<QuantityKind>();

    [Fact]
    public void Feet_and_inches_come_back_within_half_a_sixteenth() =>
        Gen.Double[-300, 300].Sample(lengthM =>
        {
            Quantity read = QuantityReaderTests.Read(FeetInches.Format(lengthM), QuantityKind.Length);
            Assert.InRange(read.Inside, lengthM - 0.0254 / 32 - 1e-9, lengthM + 0.0254 / 32 + 1e-9);
        });

    [Fact]
    public void Whole_sixteenths_come_back_exactly() =>
        Gen.Int[0, 200_000].Sample(sixteenths =>
            Assert.Equal(sixteenths * 0.0254 / 16, QuantityReaderTests.Read(FeetInches.Format(sixteenths * 0.0254 / 16), QuantityKind.Length).Inside, 1e-12));

    [Fact]
    public void Every_kind_in_both_families_comes_back_within_its_digits() =>
        Gen.Select(Gen.Int[0, s_kinds.Length - 1], Gen.Double[0.5, 900], Gen.Bool).Sample((index, typed, customary) =>
        {
            QuantityKind kind = s_kinds[index];
            string text = QuantityFormat.In(kind, typed, customary ? UnitFamily.Customary : UnitFamily.Metric);
            double read = QuantityReaderTests.Read(text, kind).Inside;
            // Four digits, a sixteenth of an inch, a centimetre, a tenth of a degree.
            Assert.InRange(read, typed * (1 - 5.1e-4) - 0.051, typed * (1 + 5.1e-4) + 0.051);
        });

    [Fact]
    public void The_first_half_of_an_echo_is_the_same_quantity() =>
        Gen.Select(Gen.Int[0, UnitTable.All.Count - 1], Gen.Double[0.5, 300]).Sample((index, number) =>
        {
            UnitOfMeasure unit = UnitTable.All[index];
            string typed = FormattableString.Invariant($"{number:0.###} {unit.Symbol}");
            Quantity read = QuantityReaderTests.Read(typed, unit.Kind);
            string understood = read.Echo.Split(" (")[0];
            double again = QuantityReaderTests.Read(understood, unit.Kind).Inside;
            double slack = unit.Kind == QuantityKind.Length ? 0.0254 / 32 : 0;
            Assert.InRange(again, read.Inside - 1e-8 * Math.Abs(read.Inside) - slack - 1e-12, read.Inside + 1e-8 * Math.Abs(read.Inside) + slack + 1e-12);
        });

    [Fact]
    public void No_text_makes_the_reader_throw()
    {
        Gen<string> builderish = Gen.OneOf(((string[])["1", "12", "'", "\"", "½", "ft", "in", "-", "/", ":", ".", ",", " ", "$", "R", "F", "°", "m2", "e", "%", "−", "kBtu/h", "(", "sunrise", "+", "wk", "am"]).Select(Gen.Const).ToArray()).Array[0, 9]
            .Select(parts => string.Concat(parts));
        Gen.Select(Gen.OneOf(Gen.String, builderish), Gen.Int[0, s_kinds.Length - 1]).Sample((text, index) =>
        {
            bool read = QuantityReader.TryRead(text, s_kinds[index], out Quantity quantity, out Misreading? misreading);
            Assert.Equal(read, misreading is null);
            Assert.True(!read || (double.IsFinite(quantity.Inside) && quantity.Echo.Length > 0));
            Assert.True(TimeOfDay.TryRead(text, out _, out Misreading? time) || time.Right.Length > 0);
            Assert.True(YearSpan.TryRead(text, out _, out Misreading? span) || span.Right.Length > 0);
        }, iter: 20_000);
    }
}
