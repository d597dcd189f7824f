using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>
/// Jets of unit heaters along the house, as far as their throw. A round free jet is half as fast at its edge as on its axis; that edge goes out by a tenth of
/// the way (Pope, Turbulent Flows, section 5.1; from memory), beginning with half the heater's width.
/// </summary>
internal sealed class HeaterJets
{
    /// <summary>How much the half-speed radius grows over the way.</summary>
    public const double SpreadFraction = 0.1;

    private readonly List<Jet> _jets = [];

    /// <summary>Where a heater's jet begins and ends along the house, m, and which way it blows.</summary>
    private readonly record struct Jet(string Id, HungBox Box, bool TowardsEnd2, double ThrowM)
    {
        public double MiddleYM => Box.Corner.YM + Box.Size.YM / 2;

        public double MiddleZM => Box.Corner.ZM + Box.Size.ZM / 2;

        public double MouthXM => TowardsEnd2 ? Box.Corner.XM + Box.Size.XM : Box.Corner.XM;

        public double RadiusM => Box.Size.YM / 2;

        public double AheadM(double xM) => TowardsEnd2 ? xM - MouthXM : MouthXM - xM;

        // A body in the core of the jet, as wide as it is at the body's far side.
        public bool Meets(HungBox body)
        {
            double nearM = AheadM(TowardsEnd2 ? body.Corner.XM : body.Corner.XM + body.Size.XM);
            double radiusM = RadiusM + SpreadFraction * Math.Max(nearM + body.Size.XM, 0);
            return nearM > -body.Size.XM + 1e-6 && nearM < ThrowM
                && Math.Abs(body.Corner.YM + body.Size.YM / 2 - MiddleYM) < radiusM + body.Size.YM / 2 - 1e-6
                && Math.Abs(body.Corner.ZM + body.Size.ZM / 2 - MiddleZM) < radiusM + body.Size.ZM / 2 - 1e-6;
        }

        // Two that blow at each other: their cores touch before either has died away.
        public bool Against(Jet other)
        {
            double betweenM = AheadM(other.MouthXM);
            double apartM = double.Hypot(MiddleYM - other.MiddleYM, MiddleZM - other.MiddleZM);
            return TowardsEnd2 != other.TowardsEnd2 && betweenM > 0 && betweenM < ThrowM + other.ThrowM
                && apartM < RadiusM + other.RadiusM + SpreadFraction * betweenM - 1e-6;
        }
    }

    /// <summary>A heater hung for good.</summary>
    public void Add(HeaterUnit heater, HungBox box, bool towardsEnd2) => _jets.Add(new Jet(heater.Id, box, towardsEnd2, heater.ThrowM));

    /// <summary>The heater that one at this place would run into or be run into by; null when there is none.</summary>
    public string? Met(HeaterUnit heater, HungBox box, bool towardsEnd2)
    {
        var mine = new Jet(heater.Id, box, towardsEnd2, heater.ThrowM);
        return _jets.Find(j => j.Meets(box) || mine.Meets(j.Box) || mine.Against(j)).Id;
    }

    /// <summary>The heater whose jet a fan that blows the other way would stand in; null when there is none.</summary>
    public string? Against(HungBox fan, bool towardsEnd2) => _jets.Find(j => j.TowardsEnd2 != towardsEnd2 && j.Meets(fan)).Id;
}
