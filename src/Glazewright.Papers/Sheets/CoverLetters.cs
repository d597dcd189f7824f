using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>A letter for each covering of a house, set where no opening is.</summary>
internal sealed class CoverLetters
{
    private readonly Dictionary<string, string> _letters = [];

    public CoverLetters(BuildingForm b)
    {
        List<string> said = [];
        foreach (CoverZone zone in b.Faces.Where(f => f.Name != FaceName.Floor).SelectMany(f => f.Zones))
        {
            if (_letters.ContainsKey(zone.Cover.Kind))
            {
                continue;
            }

            string letter = ((char)('a' + Math.Min(_letters.Count, 25))).ToString();
            _letters.Add(zone.Cover.Kind, letter);
            said.Add($"{letter}: {CoverLook.Of(zone.Cover).Name}");
        }

        Key = "Coverings: " + string.Join("; ", said);
    }

    public string Key { get; }

    /// <summary>The letters of a face, one to a zone.</summary>
    /// <param name="view">The face.</param>
    /// <param name="holes">What they keep clear of, as drawn.</param>
    /// <param name="mmPerM">Scale.</param>
    /// <param name="height">Height on the drawing of a place up the face.</param>
    public IEnumerable<Entity> Marks(FaceView view, IReadOnlyList<Box> holes, double mmPerM, Func<double, double> height)
    {
        double r = 2.9 / mmPerM;
        foreach (CoverZone zone in view.Face.Zones)
        {
            IReadOnlyList<Spot> ring = [.. view.Ring(zone.Outline).Select(p => p with { Y = height(p.Y) })];
            Box box = SitePlan.Bounds(ring);
            foreach ((double across, double up) in ((double, double)[])[(0.5, 0.5), (0.35, 0.5), (0.65, 0.5), (0.2, 0.5), (0.8, 0.5), (0.5, 0.75), (0.5, 0.25), (0.1, 0.5), (0.9, 0.5), (0.3, 0.25), (0.7, 0.25), (0.05, 0.5), (0.95, 0.5)])
            {
                Spot at = new(box.Left + across * box.Width, box.Top + up * box.Height);
                bool inside = at.X - r >= box.Left && at.X + r <= box.Right && at.Y - r >= box.Top && at.Y + r <= box.Bottom
                    && Inside(ring, at with { Y = at.Y + r }) && Inside(ring, at with { Y = at.Y - r });
                if (inside && holes.All(h => at.X + r < h.Left || at.X - r > h.Right || at.Y + r < h.Top || at.Y - r > h.Bottom))
                {
                    yield return new Entity.Fill([SheetMarks.Ring(at, r)], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = zone.Id };
                    yield return new Entity.Arc(at, r) { Role = Role.Dimension, Source = zone.Id };
                    yield return new Entity.Label(at, _letters[zone.Cover.Kind]) { Role = Role.Text, Face = Face.SemiBold, Along = Along.Middle, Across = Across.Middle, Source = zone.Id };
                    break;
                }
            }
        }
    }

    internal static bool Inside(IReadOnlyList<Spot> ring, Spot p)
    {
        bool inside = false;
        for (int i = 0, j = ring.Count - 1; i < ring.Count; j = i++)
        {
            if (ring[i].Y > p.Y != ring[j].Y > p.Y && p.X < (ring[j].X - ring[i].X) * (p.Y - ring[i].Y) / (ring[j].Y - ring[i].Y) + ring[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
