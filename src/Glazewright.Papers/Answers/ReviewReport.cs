using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Answers;

/// <summary>What a plan reviewer or engineer looks for first: criteria, shapes, ways out, loads, members, reactions.</summary>
public static class ReviewReport
{
    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Report Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        QuestionAnswered structure = StructureAnswer.Of(source);
        List<Block> blocks =
        [
            new Block.Opening(name, "Design criteria and preliminary structure", [source.Job.Site.Place, "To be sealed: this space is left for the engineer."]),
            new Block.Caution("Preliminary", SheetStyle.Preliminary),
            new Block.Heading(1, "Criteria"),
            new Block.TableOf(Criteria(source)),
            new Block.Heading(1, "Buildings"),
            new Block.TableOf(Buildings(source)),
        ];
        Table doors = Doors(source);
        if (doors.Rows.Count > 0)
        {
            blocks.Add(new Block.Heading(1, "Doors and ways out"));
            blocks.Add(new Block.TableOf(doors));
        }

        Finding[] findings = [.. WhiteList.ForReview(source).Distinct().OrderByDescending(f => f.Severity)];
        if (findings.Length > 0)
        {
            blocks.Add(new Block.Heading(1, "Findings on shape, structure and safety"));
            blocks.AddRange(FindingTables.Of(findings));
        }

        blocks.Add(new Block.Heading(1, "Structure, first look"));
        blocks.Add(new Block.Lead(structure.Short));
        blocks.AddRange(structure.Blocks);
        blocks.Add(new Block.Heading(2, "Base reactions of a typical frame, greatest of each"));
        blocks.Add(new Block.TableOf(Reactions(source)));
        foreach (HouseResults house in source.Houses.Where(h => h.Frame.ByLoad.Count > 0))
        {
            blocks.Add(new Block.Heading(2, $"House {house.Form.Id}: base forces by load"));
            blocks.Add(new Block.TableOf(ByLoad(house, new Said(source.Job.Units))) { Whole = true });
        }

        blocks.Add(new Block.Paragraph("By load: what a typical interior frame puts on its bases, unfactored, first order; snow and wind at the level their edition gives them. Down is positive and lift negative, across is positive towards the right wall, moments are positive clockwise in the section with the left wall on the left. D dead, C collateral and crop, Lr roof live, S snow, W wind. End frames, bracing bays and the wind on end walls are not in it.", Quiet: true));
        blocks.Add(new Block.Paragraph("Every load, section, check and reaction is worked out in calculation.pdf.", Quiet: true));
        return new Report(
            name + ": design criteria",
            "Design criteria and preliminary structure",
            name + " · preliminary, not for construction",
            PaperDate.Of(source.Job),
            PaperDate.Size(source.Job),
            blocks);
    }

    private static Table Criteria(PaperSource source)
    {
        Job job = source.Job;
        Said said = new(job.Units);
        string Or(string text) => text.Length > 0 ? text : "not stated";
        string Edition(LoadEdition edition) => edition == LoadEdition.Asce716 ? "ASCE/SEI 7-16" : "ASCE/SEI 7-22";
        return new Table([new("Criterion", 62), new("Value", 112)], [
            ["Authority having jurisdiction", Or(job.Occupancy.Authority)],
            ["Adopted code", Or(job.Occupancy.BuildingCode)],
            ["Who enters", job.Occupancy.Visitors switch { Visitors.StaffOnly => "staff only", Visitors.Customers => "customers", _ => "pupils or tours" }],
            ["Risk category", FormattableString.Invariant($"{job.Occupancy.RiskCategory}")],
            ["Ground snow", $"{said.Text(job.Site.Snow.GroundPa, Unit.AreaLoad)}, {Edition(job.Site.Snow.Edition)}"],
            ["Basic wind speed", FormattableString.Invariant($"{said.Text(job.Site.Wind.SpeedMs, Unit.MetrePerSecond)}, exposure {job.Site.Wind.Exposure}, topographic factor {job.Site.Wind.TopographicFactor:0.00}, {Edition(job.Site.Wind.Edition)}")],
            ["Kept warm all winter", job.Occupancy.HeatedAllWinter ? "yes, by the owner's word" : "no"],
            ["Temperature alarm in winter", job.Occupancy.FreezeAlarm ? "yes" : "no"],
            ["Soil", $"{Or(job.Site.Ground.Soil)}, presumed bearing {said.Text(job.Site.Ground.BearingPa, Unit.AreaLoad)}"],
            ["Frost depth", said.Text(job.Site.Ground.FrostDepthM, Unit.Metre)],
            ["Dimensions are measured", job.Datum.Plan switch { PlanDatum.OutToOutOfSteel => "out to out of steel", PlanDatum.OutToOutOfCovering => "out to out of covering", _ => "clear inside" }],
        ]);
    }

    private static Table Buildings(PaperSource source)
    {
        Said said = new(source.Job.Units);
        LengthStyle style = SheetStyle.Lengths(source.Job);
        return new Table(
            [new("Building", 50), new("Width", 24, Along.End), new("Length", 26, Along.End), new("Ridge", 24, Along.End), new("Floor", 25, Along.End), new("Volume", 25, Along.End)],
            [.. source.Form.Buildings.Select(b => (IReadOnlyList<string>)[
                b.IsHouse ? $"{b.Id}, {b.Name}" : b.Name, LengthText.Of(b.WidthM, style), LengthText.Of(b.LengthM, style), LengthText.Of(b.Roof.RidgeM, style), said.Text(b.FloorAreaM2, Unit.SquareMetre), said.Text(b.VolumeM3, Unit.CubicMetre),
            ])]);
    }

    private static Table Doors(PaperSource source)
    {
        LengthStyle style = SheetStyle.Lengths(source.Job);
        List<IReadOnlyList<string>> rows = [];
        foreach (BuildingForm b in source.Form.Buildings)
        {
            foreach (FaceForm face in b.Faces)
            {
                foreach (Opening door in face.Openings.Select(o => o.Opening).Where(o => o.Kind.IsDoor()))
                {
                    rows.Add([
                        b.Id, door.Id, Compass.Word(face.AzimuthDeg) + " wall", LengthText.Of(door.WidthM, style), LengthText.Of(door.HeightM, style), door.Kind switch { OpeningKind.Door => "one leaf", OpeningKind.DoubleDoor => "two leaves", OpeningKind.RollUpDoor => "roll-up", _ => "sliding" }, door.Exit ? "way out" : "",
                    ]);
                }
            }
        }

        return new Table([new("In", 16), new("Door", 30), new("Wall", 34), new("Width", 24, Along.End), new("Height", 24, Along.End), new("Leaves", 24), new("", 22)], rows);
    }

    private static Table ByLoad(HouseResults house, Said said)
    {
        string Force(double forceN) => Math.Abs(forceN) < 0.5 ? "0" : said.Text(forceN, Unit.Newton);
        string Moment(double momentNm) => Math.Abs(momentNm) < 0.5 ? "0" : said.Text(momentNm, Unit.NewtonMetre);
        return new Table(
            [
                new("", 8), new("Load", 54), new("Left, down", 19, Along.End), new("Left, across", 19, Along.End), new("Left, moment", 19, Along.End), new("Right, down", 19, Along.End),
                new("Right, across", 19, Along.End), new("Right, moment", 19, Along.End),
            ],
            [
                .. house.Frame.ByLoad.Select(r => (IReadOnlyList<string>)
                [
                    r.Sort, r.Load, Force(r.Left.DownN), Force(r.Left.AcrossN), Moment(r.Left.MomentNm), Force(r.Right.DownN), Force(r.Right.AcrossN), Moment(r.Right.MomentNm),
                ]),
            ]);
    }

    private static Table Reactions(PaperSource source)
    {
        Said said = new(source.Job.Units);
        return new Table(
            [new("House", 20), new("Wall", 30), new("Down", 30, Along.End), new("Uplift", 30, Along.End), new("Sideways", 30, Along.End), new("Moment", 34, Along.End)],
            [.. source.Houses.SelectMany(h => h.Frame.Reactions.Select(r => (IReadOnlyList<string>)[
                h.Form.Id, Compass.Word(h.Form.Face(r.Side).AzimuthDeg), said.Text(r.DownN, Unit.Newton), said.Text(r.UpN, Unit.Newton), said.Text(r.ThrustN, Unit.Newton), said.Text(r.MomentNm, Unit.NewtonMetre),
            ]))]);
    }
}
