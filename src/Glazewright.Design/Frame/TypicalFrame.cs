using Glazewright.Design.Form;
using Glazewright.Mechanics.Frames;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>Sections of a frame on trial.</summary>
internal sealed record FrameSections(TubeSection Column, TubeSection Rafter, TubeSection Purlin);

/// <summary>A member of the frame, which may be several solver members in a row (a rafter cut by a collar tie).</summary>
internal sealed record FramePart(string Name, MemberRole Role, IReadOnlyList<FramePiece> Pieces)
{
    /// <summary>A load that varies evenly between two fractions of the whole part.</summary>
    internal IEnumerable<MemberLoad> Spread(SpreadDirection direction, double nPerM, double from = 0, double to = 1)
    {
        foreach (FramePiece p in Pieces)
        {
            double start = Math.Max(from, p.From);
            double stop = Math.Min(to, p.To);
            if (stop > start && nPerM != 0)
            {
                double width = p.To - p.From;
                yield return new MemberLoad.Spread(
                    p.Member, direction, nPerM, nPerM, Math.Clamp((start - p.From) / width, 0, 1), Math.Clamp((stop - p.From) / width, 0, 1));
            }
        }
    }
}

/// <summary>A solver member and the stretch of its part it makes.</summary>
internal sealed record FramePiece(int Member, double From, double To);

/// <summary>
/// A typical interior frame on its centre lines, walked from the left base over the ridge to the right base, so that "normal" of every member points out
/// of the house.
/// </summary>
internal sealed record TypicalFrame(
    FrameModel Model,
    FramePart LeftColumn,
    FramePart LeftRafter,
    FramePart RightRafter,
    FramePart RightColumn,
    FramePart? Collar,
    int LeftEave,
    int Ridge,
    int RightEave)
{
    internal IEnumerable<FramePart> Parts => Collar is null
        ? [LeftColumn, LeftRafter, RightRafter, RightColumn]
        : [LeftColumn, LeftRafter, RightRafter, RightColumn, Collar];

    /// <summary>Builds the frame.</summary>
    /// <param name="section">Outline.</param>
    /// <param name="collarM">Height of the collar tie, m; none when it does not cross both slopes.</param>
    /// <param name="fixedBase">Fixed or pinned bases.</param>
    /// <param name="sections">Sections on trial.</param>
    /// <param name="elasticPa">Young's modulus, reduced for strength.</param>
    internal static TypicalFrame Of(GableSection section, double collarM, bool fixedBase, FrameSections sections, double elasticPa)
    {
        FrameMember Make(int a, int b, TubeSection s) => new(a, b, elasticPa, s.AreaM2, s.StrongInertiaM4);
        var nodes = new List<FrameNode>
        {
            new(0, 0), new(0, section.LeftEaveM), new(section.LeftRunM, section.RidgeM), new(section.WidthM, section.RightEaveM), new(section.WidthM, 0),
        };
        double highEaveM = Math.Max(section.LeftEaveM, section.RightEaveM);
        bool hasCollar = collarM > highEaveM + 0.05 && collarM < section.RidgeM - 0.05;
        var members = new List<FrameMember> { Make(0, 1, sections.Column) };
        FramePart leftRafter, rightRafter;
        FramePart? collar = null;
        if (hasCollar)
        {
            double left = (collarM - section.LeftEaveM) / (section.RidgeM - section.LeftEaveM);
            double right = (section.RidgeM - collarM) / (section.RidgeM - section.RightEaveM);
            nodes.Add(new FrameNode(left * section.LeftRunM, collarM));
            nodes.Add(new FrameNode(section.LeftRunM + right * section.RightRunM, collarM));
            members.AddRange([
                Make(1, 5, sections.Rafter), Make(5, 2, sections.Rafter), Make(2, 6, sections.Rafter), Make(6, 3, sections.Rafter), Make(3, 4, sections.Column),
                Make(5, 6, sections.Rafter) with { PinnedAtStart = true, PinnedAtEnd = true },
            ]);
            leftRafter = new FramePart("rafter-left", MemberRole.Rafter, [new(1, 0, left), new(2, left, 1)]);
            rightRafter = new FramePart("rafter-right", MemberRole.Rafter, [new(3, 0, right), new(4, right, 1)]);
            collar = new FramePart("collar-tie", MemberRole.CollarTie, [new(6, 0, 1)]);
        }
        else
        {
            members.AddRange([Make(1, 2, sections.Rafter), Make(2, 3, sections.Rafter), Make(3, 4, sections.Column)]);
            leftRafter = new FramePart("rafter-left", MemberRole.Rafter, [new(1, 0, 1)]);
            rightRafter = new FramePart("rafter-right", MemberRole.Rafter, [new(2, 0, 1)]);
        }

        FrameSupport[] supports = fixedBase
            ? [FrameSupport.Fixed(0), FrameSupport.Fixed(4)]
            : [FrameSupport.Pinned(0), FrameSupport.Pinned(4)];
        int last = hasCollar ? 5 : 3;
        return new TypicalFrame(
            new FrameModel(nodes, members, supports),
            new FramePart("column-left", MemberRole.Column, [new(0, 0, 1)]),
            leftRafter,
            rightRafter,
            new FramePart("column-right", MemberRole.Column, [new(last, 0, 1)]),
            collar,
            LeftEave: 1,
            Ridge: 2,
            RightEave: 3);
    }
}
