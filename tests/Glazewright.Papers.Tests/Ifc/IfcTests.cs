using System.Globalization;
using System.Text;
using System.Text.Json;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Ifc;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;
using Glazewright.Papers.Tests.Solids;

namespace Glazewright.Papers.Tests.Ifc;

/// <summary>Models of all samples read once by the other program, for the tests of one class.</summary>
public sealed class ModelsRead : IDisposable
{
    internal static readonly string[] Names = ["yard", "metric", "awkward", "long", "tiny", "none"];

    internal IReadOnlyDictionary<string, PaperSource> Sources { get; } = new Dictionary<string, PaperSource>
    {
        ["yard"] = SolidSamples.Yard(),
        ["metric"] = SolidSamples.Yard(UnitSystem.Metric, 1),
        ["awkward"] = SolidSamples.Yard(UnitSystem.Us, 10, SolidSamples.Awkward),
        ["long"] = SolidSamples.Long(),
        ["tiny"] = SolidSamples.Tiny(),
        ["none"] = SolidSamples.Yard(houses: 0),
    };

    internal JsonDocument? Said { get; }

    public ModelsRead() => Said = IfcReader.Read([.. Names.Select(n => Bytes(Sources[n]))]);

    internal JsonElement Of(string name)
    {
        Assert.SkipWhen(Said is null, "web-ifc or Node is not on this machine (run eng/fetch-references): nobody else has read the building model.");
        return Said!.RootElement.GetProperty("answers")[Array.IndexOf(Names, name)];
    }

    internal static byte[] Bytes(PaperSource source) => IfcWriter.Bytes(RangeSolids.Of(source), source.Job, source.Version);

    public void Dispose() => Said?.Dispose();
}

/// <summary>Building models as another program reads them (<see cref="IfcReader"/>), and held against Form, Body, Layout and Takeoff.</summary>
public class IfcTests(ModelsRead read) : IClassFixture<ModelsRead>
{
    public static TheoryData<string> All { get; } = [.. ModelsRead.Names];

    [Theory, MemberData(nameof(All))]
    public void Another_reader_finds_every_instance_in_the_schema(string sample)
    {
        JsonElement told = read.Of(sample);
        Assert.Empty(read.Said!.RootElement.GetProperty("said").EnumerateArray().Select(s => s.GetString()));
        Assert.Equal("IFC4", told.GetProperty("schema").GetString());
        Assert.Empty(told.GetProperty("faults").EnumerateArray().Select(f => f.GetString()));
        string[] ids = [.. told.GetProperty("guids").EnumerateArray().Select(g => g.GetString()!)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(ids, i => Assert.Matches("^[0-3][0-9A-Za-z_$]{21}$", i));
    }

    [Theory, MemberData(nameof(All))]
    public void Every_element_is_named_contained_once_and_as_large_as_built(string sample)
    {
        RangeSolids solids = RangeSolids.Of(read.Sources[sample]);
        Element[] elements = [.. Elements(sample).Where(IsPart)];
        SolidPart[] parts = [.. solids.Buildings.SelectMany(b => b.Parts)];
        Assert.Equal(parts.Select(p => p.Id).Order(StringComparer.Ordinal), elements.Select(e => e.Name).Order(StringComparer.Ordinal));
        Assert.All(elements, e => Assert.Equal(1, e.Contained));
        Dictionary<string, SolidPart> byId = parts.ToDictionary(p => p.Id);
        foreach (Element e in elements)
        {
            SolidPart part = byId[e.Name];

            // The reader draws a disc with eleven sides, 5.4 % smaller, and a tube's corners by chords; tubes sawn at an angle are drawn with sharp ones.
            Prism prism = part.Shape.Prisms[0];
            bool sawn = !prism.Start.IsSquare || !prism.End.IsSquare;
            double tolerance = prism.Profile switch { Profile.Disc => 0.055, Profile.Tube when !sawn => 0.01, _ => 1e-3 };
            double builtM3 = prism.Profile is Profile.Tube t && sawn ? 2 * (t.WidthM + t.DepthM - 2 * t.WallM) * t.WallM * (prism.End.AtM - prism.Start.AtM) : part.Shape.VolumeM3;
            Assert.True(Math.Abs(e.Volume - builtM3) <= tolerance * builtM3 + 1e-6, $"{e.Name}: {e.Volume} read, {builtM3} built");
        }
    }

    // Form's own areas, not the plates': gross less openings, and less where a link building leans on another.
    [Theory, InlineData("yard"), InlineData("metric"), InlineData("awkward")]
    public void Covering_has_the_area_of_Form(string sample)
    {
        PaperSource source = read.Sources[sample];
        Dictionary<string, Element> plates = Elements(sample).Where(e => e.Kind == "IfcPlate").ToDictionary(e => e.Name);
        foreach (BuildingForm building in source.Form.Buildings)
        {
            LayoutResult? layout = source.Houses.FirstOrDefault(h => h.House.Id == building.Id)?.Layout;
            foreach (FaceForm face in building.Faces)
            {
                foreach (CoverZone zone in face.Zones)
                {
                    double openM2 = face.Openings.Sum(o => Overlap(zone, o.Opening.OffsetM, o.Opening.SillM, o.Opening.WidthM, o.Opening.HeightM));
                    foreach (PlacedItem p in layout?.Placed.Where(p => p.Face == face.Name && p.Kind is PlacedKind.Louver or PlacedKind.PressureFan) ?? [])
                    {
                        // The sample's fans and pad stand in typed openings; louvers and the filter fan have none.
                        bool end = face.Name is FaceName.End1 or FaceName.End2;
                        openM2 += Overlap(zone, end ? p.Corner.YM : p.Corner.XM, p.Corner.ZM, end ? p.Size.YM : p.Size.XM, p.Size.ZM);
                    }

                    double netM2 = zone.GrossM2 - openM2 - (building.IsHouse ? 0 : zone.SharedM2);
                    double thickM = CoverStuff.Of(zone.Cover.Kind).ThicknessM;
                    if (netM2 < 1e-6)
                    {
                        Assert.DoesNotContain(zone.Id, plates.Keys);
                        continue;
                    }

                    Assert.Equal(netM2, plates[zone.Id].Volume / thickM, netM2 * 1e-3);
                    Assert.Equal(netM2, plates[zone.Id].Number("Qto_PlateBaseQuantities.NetArea"), 1e-4);
                }
            }
        }
    }

    [Theory, InlineData("yard"), InlineData("long"), InlineData("tiny")]
    public void Steel_weighs_what_the_takeoff_buys_and_carries_its_marks(string sample)
    {
        PaperSource source = read.Sources[sample];
        Element[] members = [.. Elements(sample).Where(e => IsPart(e) && e.Kind is "IfcColumn" or "IfcMember" or "IfcBeam")];
        Assert.Equal(source.Body.Members.Count, members.Length);
        Assert.All(members, m => Assert.Equal((1, 1), (m.Typed, m.Made)));
        double kg = members.Sum(m => m.Number(m.Sheet("GrossWeight")));
        Assert.Equal(source.Body.Members.Sum(m => m.CutLengthM * m.MassPerM), kg, kg * 1e-6);

        // The shop's step of 1/16 in a piece is all that the takeoff may differ by.
        Assert.Equal(source.Takeoff.Marks.Sum(m => m.Count * m.MassEachKg), kg, members.Length * 0.0008 * 15);
        foreach (ShopMark mark in source.Takeoff.Marks)
        {
            Element[] own = [.. members.Where(m => m.Tag == mark.Mark)];
            Assert.Equal(mark.Count, own.Length);
            Assert.All(own, m => Assert.Equal(mark.LengthM, m.Number("Glazewright_Shop.CutLength"), 0.0008));
            Assert.All(own, m => Assert.Equal(mark.Section, m.Sheets["Glazewright_Shop.Section"]));
        }
    }

    // Joints and rods have no body: none is designed.
    private static bool IsPart(Element e) => e.Kind is not ("IfcDiscreteAccessory" or "IfcElementAssembly") && !e.Name.Contains("/braced-bay-", StringComparison.Ordinal);

    // What another program counts is what is bought, and every connection joins the members that Form and Framing have there.
    [Theory, InlineData("yard"), InlineData("metric"), InlineData("awkward"), InlineData("long"), InlineData("tiny")]
    public void Joints_and_braced_bays_are_those_of_the_takeoff(string sample)
    {
        PaperSource source = read.Sources[sample];
        JsonElement told = read.Of(sample);
        Element[] accessories = [.. Elements(sample).Where(e => e.Kind == "IfcDiscreteAccessory")];
        FrameJoint[] joints = [.. source.Form.Buildings.Where(b => b.IsHouse).SelectMany(b => FrameJoints.Of(b, source.Body.Members))];
        Dictionary<string, FrameJoint> byId = joints.ToDictionary(j => j.Id);
        Assert.Equal(joints.Length, accessories.Length);
        Assert.All(accessories, a => Assert.Equal(1, a.Contained));
        foreach (var item in accessories.GroupBy(a => JointLines.Of(byId[a.Name].Kind).Item))
        {
            Assert.Equal(source.Takeoff.Lines.Where(l => l.Item == item.Key).Sum(l => l.Quantity), item.Count());
        }

        int realised = 0;
        foreach (JsonElement c in told.GetProperty("connects").EnumerateArray().Where(c => c.GetProperty("kind").GetString() == "IfcRelConnectsWithRealizingElements"))
        {
            FrameJoint joint = byId[Assert.Single(c.GetProperty("by").EnumerateArray()).GetString()!];
            Assert.Equal(joint.Member, c.GetProperty("one").GetString());
            string two = c.GetProperty("two").GetString()!;
            Assert.True(joint.Kind == JointKind.Base ? two.EndsWith("/pier", StringComparison.Ordinal) || two.EndsWith("/floor/solid", StringComparison.Ordinal) : two == joint.To, $"{joint.Id}: {two}");
            realised++;
        }

        Assert.Equal(joints.Length, realised);
        BracedBay[] bays = [.. source.Form.Buildings.Where(b => b.IsHouse).SelectMany(FrameJoints.Braced)];
        Dictionary<string, string[]> wholes = told.GetProperty("wholes").EnumerateObject().ToDictionary(w => w.Name, w => w.Value.EnumerateArray().Select(v => v.GetString()!).ToArray());
        Assert.Equal(source.Takeoff.Lines.Where(l => l.Item == LineItems.Bracing).Sum(l => l.Quantity), wholes.Count);
        foreach (BracedBay bay in bays)
        {
            Assert.Equal(2, wholes[bay.Id].Length);
            foreach ((string name, RodLine rod) in wholes[bay.Id].Zip(bay.Rods))
            {
                double[][] ends = [.. told.GetProperty("axes").GetProperty(name).EnumerateArray().Select(p => p.EnumerateArray().Select(x => x.GetDouble()).ToArray())];
                Assert.Equal(rod.LengthM, Math.Sqrt(ends[0].Zip(ends[1]).Sum(p => (p.First - p.Second) * (p.First - p.Second))), 1e-6);
                string[] to = [.. told.GetProperty("connects").EnumerateArray().Where(c => c.GetProperty("one").GetString() == name).Select(c => c.GetProperty("two").GetString()!)];
                Assert.Equal([rod.FromMember, rod.ToMember], to);
            }
        }
    }

    // Metal: length by area of metal is mass by density (490 lb/ft³), where the section's name tells its mass.
    [Fact]
    public void A_tube_is_as_long_as_it_is_cut()
    {
        PaperSource source = read.Sources["yard"];
        Dictionary<string, Element> read1 = Elements("yard").ToDictionary(e => e.Name);
        foreach (MemberSolid m in source.Body.Members)
        {
            double[] box = read1[m.Line.Id].Box;
            switch (m.Line.Role)
            {
                // Upright, so the box is as high as the long point.
                case MemberRole.Column or MemberRole.EndPost:
                    Assert.Equal(m.CutLengthM, box[5] - box[2], 1e-3);
                    break;

                // Plumb at both ends: along the slope it is as long as its run over the cosine.
                case MemberRole.Rafter:
                    double run = box[4] - box[1];
                    double rise = Math.Abs(m.Line.B.ZM - m.Line.A.ZM);
                    Assert.Equal(m.CutLengthM, run * m.Line.LengthM / Math.Sqrt(m.Line.LengthM * m.Line.LengthM - rise * rise), 1e-3);
                    break;
                default:
                    Assert.Equal(m.CutLengthM, box[3] - box[0], 1e-3);
                    break;
            }
        }
    }

    [Theory, InlineData("yard"), InlineData("metric"), InlineData("awkward")]
    public void Openings_are_those_of_the_job_and_the_layout(string sample)
    {
        PaperSource source = read.Sources[sample];
        JsonElement told = read.Of(sample);
        string[][] fills = [.. told.GetProperty("fills").EnumerateArray().Select(f => f.EnumerateArray().Select(x => x.GetString()!).ToArray())];

        // What closes an opening does so once: every door, window and vent of the job, and all equipment that the wall sheets frame, typed or not.
        IEnumerable<string> doors = source.Form.Buildings.SelectMany(b => b.Faces).SelectMany(f => f.Openings)
            .Where(o => o.Opening.Kind is OpeningKind.Door or OpeningKind.DoubleDoor or OpeningKind.Window or OpeningKind.Vent).Select(o => o.Id);
        IEnumerable<string> framed = source.Houses.SelectMany(h => ((FaceName[])[FaceName.Left, FaceName.Right, FaceName.End1, FaceName.End2])
            .SelectMany(f => WallFraming.Openings(h.Form, h.Layout, f)).Where(o => !o.IsDoor && o.Framed).Select(o => o.Id));
        Assert.Equal(doors.Concat(framed).Order(StringComparer.Ordinal), fills.Select(f => f[1]).Order(StringComparer.Ordinal));
        HashSet<string> holes = [.. told.GetProperty("voids").EnumerateArray().Select(v => v.GetString()!)];
        string[] equipment = [.. source.Houses.SelectMany(h => h.Layout.Placed).Where(p => p.Kind is PlacedKind.Louver).Select(p => p.Id)];
        Assert.Empty(source.Form.Buildings.SelectMany(b => b.Faces).SelectMany(f => f.Openings).Select(o => o.Id).Concat(equipment).Except(holes));
    }

    [Theory, InlineData("yard"), InlineData("long"), InlineData("tiny")]
    public void The_box_round_steel_is_the_house_and_the_covering_lies_outside_it(string sample)
    {
        PaperSource source = read.Sources[sample];
        Element[] elements = [.. Elements(sample).Where(IsPart)];
        foreach (BuildingForm house in source.Form.Buildings.Where(b => b.IsHouse))
        {
            double[][] steel = [.. elements.Where(e => e.Kind is "IfcColumn" or "IfcMember" or "IfcBeam" && e.Name.StartsWith(house.Id + "/", StringComparison.Ordinal)).Select(e => e.Box)];
            double[] box = [house.Origin.XM, house.Origin.YM, 0, house.Origin.XM + house.LengthM, house.Origin.YM + house.WidthM, house.Roof.RidgeM];
            for (int i = 0; i < 6; i++)
            {
                Assert.Equal(box[i], i < 3 ? steel.Min(b => b[i]) : steel.Max(b => b[i]), 2e-3);
            }

            foreach (Element plate in elements.Where(e => e.Kind == "IfcPlate" && e.Name.StartsWith(house.Id + "/", StringComparison.Ordinal)))
            {
                bool past = Enumerable.Range(0, 6).Any(i => i < 3 ? plate.Box[i] < box[i] - 1e-4 : plate.Box[i] > box[i] + 1e-4);
                Assert.True(past, plate.Name);
            }
        }
    }

    [Fact]
    public void The_site_is_where_the_job_says_and_north_is_true()
    {
        JsonElement told = read.Of("yard");
        PaperSource source = read.Sources["yard"];
        double Deg(string name) => told.GetProperty(name).EnumerateArray().Select((v, i) => v.GetDouble() / (i switch { 0 => 1, 1 => 60, 2 => 3600, _ => 3600e6 })).Sum();
        Assert.Equal(source.Job.Site.LatitudeDeg, Deg("latitude"), 1e-9);
        Assert.Equal(source.Job.Site.LongitudeDeg, Deg("longitude"), 1e-9);
        Assert.Equal(source.Job.Site.ElevationM, told.GetProperty("elevation").GetDouble(), 1e-9);

        // The angle from north to the range's x, clockwise seen from above, is the bearing.
        double[] north = [.. told.GetProperty("north").EnumerateArray().Select(v => v.GetDouble())];
        double bearing = Math.Atan2(north[1], north[0]) * 180 / Math.PI;
        Assert.Equal(source.Job.Site.RangeBearingDeg, (bearing + 360) % 360, 1e-6);
    }

    [Fact]
    public void Awkward_names_come_back()
    {
        string name = read.Of("awkward").GetProperty("projectName").GetString()!;
        Assert.EndsWith("…", name);
        Assert.StartsWith(name[..^1], SolidSamples.Awkward, StringComparison.Ordinal);
        Assert.True(name.Length <= 255);
    }

    [Fact]
    public void The_file_is_ascii_without_a_clock_and_the_same_twice()
    {
        byte[] first = ModelsRead.Bytes(SolidSamples.Yard());
        Thread.Sleep(1100);
        Assert.Equal(first, ModelsRead.Bytes(SolidSamples.Yard()));
        Assert.All(first, b => Assert.True(b is 10 or (>= 32 and < 127)));
        PaperSource dated = SolidSamples.Yard();
        string text = Encoding.ASCII.GetString(ModelsRead.Bytes(dated with { Job = dated.Job with { Date = "2031-05-06" } }));
        Assert.Contains(",'2031-05-06T00:00:00',", text);
    }

    // The ids of parts stay when the job's revision or date changes, so that another program sees the same part.
    [Fact]
    public void Ids_stay_from_issue_to_issue()
    {
        PaperSource source = SolidSamples.Yard();
        string Column(Job job) => Encoding.ASCII.GetString(IfcWriter.Bytes(RangeSolids.Of(source with { Job = job }), job, "9")).Split('\n').First(l => l.Contains("=IFCCOLUMN(", StringComparison.Ordinal)).Split('(')[1][..24];
        Assert.Equal(Column(source.Job), Column(source.Job with { Revision = "B", Date = "2031-05-06" }));
        Assert.NotEqual(Column(source.Job), Column(source.Job with { Name = "Another" }));
    }

    private static double Overlap(CoverZone zone, double uM, double vM, double widthM, double heightM)
    {
        IReadOnlyList<Point2> common = Polygons.Common(zone.Outline, Polygons.Rectangle(uM, vM, widthM, heightM));
        return common.Count == 0 ? 0 : Polygons.AreaM2(common);
    }

    private Element[] Elements(string sample) => [.. read.Of(sample).GetProperty("elements").EnumerateArray().Select(e => new Element(
        e.GetProperty("kind").GetString()!, e.GetProperty("name").GetString()!, e.GetProperty("tag").GetString() ?? "",
        e.GetProperty("contained").GetInt32(), e.GetProperty("typed").GetInt32(), e.GetProperty("made").GetInt32(), e.GetProperty("volume").GetDouble(),
        [.. e.GetProperty("box").EnumerateArray().Select(v => v.GetDouble())],
        e.GetProperty("sheets").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetString()!)))];

    private sealed record Element(string Kind, string Name, string Tag, int Contained, int Typed, int Made, double Volume, double[] Box, Dictionary<string, string> Sheets)
    {
        public double Number(string name) => double.Parse(Sheets[name], CultureInfo.InvariantCulture);

        public string Sheet(string quantity) => Sheets.Keys.Single(k => k.EndsWith("." + quantity, StringComparison.Ordinal));
    }
}
