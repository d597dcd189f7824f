using System.Globalization;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Typical joints of a house at true scale, made from its own sections, coverings and foundations, each part named as the takeoff names it.</summary>
public static class DetailSheet
{
    private const int Columns = 4;
    private const double GapMm = 5;
    private const double LineMm = 3.9;
    private const double NumberMm = 5;

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        SheetDraft draft = new(source, "details-" + house.Form.Id, $"House {house.Form.Id}: details", number);
        Box room = draft.Room;
        JointPicture[] pictures = [.. Pictures(new JointParts(source, house))];
        double cellMm = (room.Width - (Columns - 1) * GapMm) / Columns;
        double rowMm = (room.Height - GapMm) / 2;
        for (int i = 0; i < pictures.Length; i++)
        {
            JointPicture picture = pictures[i];
            JointPicture[] row = [.. pictures.Skip(i / Columns * Columns).Take(Columns)];
            double notesMm = row.Max(r => Lines(r, cellMm).Sum(l => l.Count) * LineMm) + 3;
            Box box = new(room.Left + i % Columns * (cellMm + GapMm), room.Top + i / Columns * (rowMm + GapMm), cellMm, rowMm - notesMm);
            draft.Add(
                picture.Id, string.Create(CultureInfo.InvariantCulture, $"{i + 1}  {picture.Title}"), box, picture.Shown, new Pad(7, 5, 7, 7), (scale, window) =>
                {
                    double mm = 1 / scale.MmPerM;
                    Box inner = new(window.Left + 3.5 * mm, window.Top + 3.5 * mm, window.Width - 7 * mm, window.Height - 7 * mm);
                    return [.. picture.Entities, .. Tags.Draw(picture.Parts.Select((p, k) => new Tag(p.Tip, Number(k), picture.Id)), scale.MmPerM, inner)];
                },
                withBar: false);
            double y = box.Bottom + 1;
            foreach ((IReadOnlyList<string> lines, int k) in Lines(picture, cellMm).Select((l, k) => (l, k)))
            {
                draft.Paper.Add(new Entity.Label(new(box.Left, y + 2.9), Number(k)) { Role = Role.Text, Face = Face.SemiBold });
                foreach (string line in lines)
                {
                    draft.Paper.Add(new Entity.Label(new(box.Left + NumberMm, y + 2.9), line) { Role = Role.Text });
                    y += LineMm;
                }
            }
        }

        return draft.Done(
            $"Typical details of {house.Form.Name}: {string.Join(", ", pictures.Select(p => p.Title.ToLowerInvariant()))}.",
            "Preliminary: nothing in a chain-dotted ring is designed; plates, bolts, welds, anchors and rods are to be proven and sealed by a licensed engineer. Caps, gutters, profiles and clips show their place, not their shape: the maker rules.");
    }

    /// <summary>The details that the house's parts give.</summary>
    internal static IEnumerable<JointPicture> Pictures(JointParts parts)
    {
        JointPicture?[] all =
        [
            FrameDetails.Ridge(parts), FrameDetails.Eave(parts), SheetDetails.Purlin(parts), SheetDetails.Seam(parts),
            FrameDetails.Foot(parts), FrameDetails.Rod(parts), SheetDetails.Lower(parts), SheetDetails.Edge(parts),
        ];
        return all.OfType<JointPicture>();
    }

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);

    private static IReadOnlyList<string>[] Lines(JointPicture picture, double widthMm) =>
        [.. picture.Parts.Select(p => TextWrap.Lines(p.Text, Face.Regular, Lettered.SmallestMm, widthMm - NumberMm))];
}
