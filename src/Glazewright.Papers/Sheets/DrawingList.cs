using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The list of drawings with what their lines, hatches and marks mean.</summary>
public static class DrawingList
{
    private const double LegendMm = 118;
    private const double GapMm = 6;

    /// <summary>The sheets of the list: one, or more when the set is long.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="drawn">Number of every other drawing, with its sheet and readers.</param>
    /// <param name="next">Gives the next number of the general sheets.</param>
    public static IReadOnlyList<Sheet> Draw(PaperSource source, IReadOnlyList<(string Number, DrawnSheet Drawn)> drawn, Func<string> next)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(drawn);
        ArgumentNullException.ThrowIfNull(next);
        Box room = Furniture.RoomMm(SheetStyle.Size(source.Job));
        List<IReadOnlyList<string>> rows = [.. drawn.Select(d => (IReadOnlyList<string>)[d.Number, d.Drawn.Sheet.Title, PaperReaders.Initials(d.Drawn.Readers), Scale(d.Drawn.Sheet)])];
        double columnMm = (room.Width - LegendMm - 2 * GapMm) / 2;
        Table Of(IEnumerable<IReadOnlyList<string>> some) => new([new("Sheet", 16), new("Drawing", columnMm - 16 - 20 - 30), new("For", 20), new("Scale", 30)], [.. some]);

        // Rows fill two columns beside the legend on the first sheet, two on each further one.
        double heightMm = room.Height - 8;
        List<List<IReadOnlyList<string>>> columns = [[]];
        double usedMm = TableSetting.Head(Of([])).HeightMm;
        foreach (IReadOnlyList<string> row in rows)
        {
            double rowMm = TableSetting.Body(Of([row]))[0].HeightMm;
            if (usedMm + rowMm > heightMm)
            {
                columns.Add([]);
                usedMm = TableSetting.Head(Of([])).HeightMm;
            }

            columns[^1].Add(row);
            usedMm += rowMm;
        }

        // Job and code data follow the list, in its last column if there is room.
        Table code = Code(source, columnMm);
        double codeMm = TableSetting.HeightMm(code) + 12;
        if (usedMm + codeMm > heightMm)
        {
            columns.Add([]);
            usedMm = 0;
        }

        List<Sheet> sheets = [];
        for (int c = 0; c < columns.Count; c += 2)
        {
            string number = next();
            string title = c == 0 ? "Drawing list and legend" : "Drawing list, continued";
            SheetDraft draft = new(source, c == 0 ? "list" : FormattableString.Invariant($"list-{c / 2 + 1}"), title, number);
            for (int k = 0; k < 2 && c + k < columns.Count; k++)
            {
                double x = room.Left + k * (columnMm + GapMm);
                double y = columns[c + k].Count == 0 ? room.Top : draft.Table(k == 0 ? "Drawings" : "", Of(columns[c + k]), new(x, room.Top + (k == 0 ? 0 : 5.5))) + 6;
                if (c + k == columns.Count - 1)
                {
                    draft.Table("Job and code", code, new(x, y));
                }
            }

            if (c == 0)
            {
                Legend(draft, source.Job, room.Right - LegendMm);
            }

            sheets.Add(draft.Done(string.Join("; ", drawn.Select(d => $"{d.Number} {d.Drawn.Sheet.Title}")) + ".", SheetStyle.Preliminary));
        }

        return sheets;
    }

    private static Table Code(PaperSource source, double widthMm)
    {
        Job job = source.Job;
        Said said = new(job.Units);
        string Edition(LoadEdition edition) => edition == LoadEdition.Asce716 ? "ASCE/SEI 7-16" : "ASCE/SEI 7-22";
        string Or(string text) => text.Length > 0 ? text : "not given";
        List<IReadOnlyList<string>> rows =
        [
            ["Place", string.Create(CultureInfo.InvariantCulture, $"{Or(job.Site.Place)}; {Math.Abs(job.Site.LatitudeDeg):0.0}° {(job.Site.LatitudeDeg >= 0 ? "N" : "S")}, {said.Round(job.Site.ElevationM, Unit.Metre)} above the sea")],
            ["Authority; code", $"{Or(job.Occupancy.Authority)}; {Or(job.Occupancy.BuildingCode)}"],
            ["Who enters", string.Create(CultureInfo.InvariantCulture, $"{Who(job.Occupancy.Visitors)}; risk category {job.Occupancy.RiskCategory}")],
            ["Ground snow", $"{said.Text(job.Site.Snow.GroundPa, Unit.AreaLoad)}, {Edition(job.Site.Snow.Edition)}"],
            ["Basic wind", $"{said.Round(job.Site.Wind.SpeedMs, Unit.MetrePerSecond)}, exposure {job.Site.Wind.Exposure}, {Edition(job.Site.Wind.Edition)}"],
            ["Soil", $"{Or(job.Site.Ground.Soil)}; presumed {said.Round(job.Site.Ground.BearingPa, Unit.AreaLoad)}"],
        ];
        foreach (BuildingForm b in source.Form.Buildings.Take(6))
        {
            rows.Add([b.IsHouse ? "House " + b.Id : b.Name, $"{said.Round(b.FloorAreaM2, Unit.SquareMetre)}, {LengthText.Of(b.Roof.RidgeM, SheetStyle.Lengths(job))} high"]);
        }

        if (source.Form.Buildings.Count > 6)
        {
            rows.Add(["All buildings", said.Round(source.Form.Buildings.Sum(b => b.FloorAreaM2), Unit.SquareMetre)]);
        }

        return new Table([new("What", 40), new("As in the job", widthMm - 40)], rows);
    }

    private static string Who(Visitors visitors) => visitors switch
    {
        Visitors.StaffOnly => "staff only",
        Visitors.Customers => "customers too",
        _ => "pupils or tours too",
    };

    private static string Scale(Sheet sheet)
    {
        string[] scales = [.. sheet.Views.Select(v => v.Scale.Text).Distinct()];
        return scales.Length switch { 0 => "none", 1 => scales[0], _ => "as noted" };
    }

    private static void Legend(SheetDraft draft, Job job, double x)
    {
        double y = draft.Room.Top;
        draft.Heading("Lines, weight in mm", new(x, y), LegendMm);
        (Role Role, string Means)[] lines =
        [
            (Role.Cut, "cut, and what stands on the ground"), (Role.Visible, "edge in view"), (Role.Beyond, "edge in view beyond"), (Role.Hidden, "hidden; supposed bracing; curtain"),
            (Role.Centre, "centre line, ridge, grid"), (Role.Dimension, "dimension, leader, level"), (Role.Equipment, "equipment"), (Role.Light, "sun ray, edge of shade"), (Role.Lot, "lot line"), (Role.Setback, "setback"),
        ];
        y += 7;
        foreach ((Role role, string means) in lines)
        {
            y += 5;
            draft.Paper.Add(new Entity.Polyline([new(x, y - 1.2), new(x + 26, y - 1.2)]) { Role = role });
            draft.Paper.Add(new Entity.Label(new(x + 30, y), FormattableString.Invariant($"{Pens.Of(role).WidthMm:0.00}  {means}")) { Role = Role.Text });
        }

        y += 6;
        draft.Heading("Hatches", new(x, y), LegendMm);
        y += 3;
        (HatchPattern Pattern, string Means)[] hatches =
        [
            (HatchPattern.Ground, "ground"), (HatchPattern.Concrete, "concrete"), (HatchPattern.Slanted, "metal, general; neighbour"), (HatchPattern.Crossed, "insulated panel"), (HatchPattern.Upright, "wet wall, louver"),
        ];
        foreach ((HatchPattern pattern, string means) in hatches)
        {
            Box box = new(x, y + 2, 26, 5.4);
            draft.Paper.Add(new Entity.Hatch([box.Corners()], pattern, 1.6));
            draft.Paper.Add(new Entity.Polyline(box.Corners(), true) { Role = Role.Frame });
            draft.Paper.Add(new Entity.Label(new(x + 30, y + 6), means) { Role = Role.Text });
            y += 7.4;
        }

        Box clear = new(x, y + 2, 26, 5.4);
        draft.Paper.Add(new Entity.Fill([clear.Corners()], Paint.Of(Tone.Water), 0.18) { Role = Role.Fill });
        draft.Paper.Add(new Entity.Polyline(clear.Corners(), true) { Role = Role.Frame });
        draft.Paper.Add(new Entity.Label(new(x + 30, y + 6), "clear covering") { Role = Role.Text });
        y += 11;
        draft.Heading("Marks", new(x, y), LegendMm);
        y += 11;
        draft.Paper.AddRange(SheetMarks.Bubble(new(x + 6, y), "3", 1, "legend"));
        draft.Paper.Add(new Entity.Label(new(x + 14, y + 1.2), "grid line") { Role = Role.Text });
        draft.Paper.AddRange(SheetMarks.Detail(new(x + 46, y), "1", "S-n", 1, false, "legend"));
        draft.Paper.Add(new Entity.Label(new(x + 54, y + 1.2), "section or detail over its sheet") { Role = Role.Text });
        y += 11;
        draft.Paper.Add(new Entity.Level(new(x + 6, y), LengthText.Level(2.4384, draft.Style)));
        draft.Paper.Add(new Entity.Label(new(x + 30, y), "level over the floor") { Role = Role.Text });
        y += 4;
        draft.Notes(
            [
                $"For: {string.Join(", ", PaperReaders.All.Select(r => $"{PaperReaders.Initial(r)} {PaperReaders.Word(r)}"))}; their sets hold these sheets and no others.",
                "Member marks: C column, E end post, R rafter, T tie, L along the house; S sheet, P panel: as on the cut list. F pier.",
                $"Plan sizes {Plan(job.Datum.Plan)}; heights from {Heights(job.Datum.Heights)}; eaves to {(job.Datum.Eave == EaveDatum.TopOfSteel ? "the top of the steel" : "under the gutter")}. {(draft.Style == LengthStyle.FeetInches ? "Feet, inches and sixteenths" : "Millimetres")}. Written dimensions rule; do not scale.",
                "Left and right as seen looking from end 2 to end 1.",
            ],
            new(x, y), LegendMm);
    }

    private static string Plan(PlanDatum datum) => datum switch
    {
        PlanDatum.OutToOutOfSteel => "out to out of steel",
        PlanDatum.OutToOutOfCovering => "out to out of the covering",
        _ => "clear inside",
    };

    private static string Heights(HeightDatum datum) => datum switch
    {
        HeightDatum.FinishedFloor => "the finished floor",
        HeightDatum.TopOfPier => "the top of the piers",
        _ => "outside grade",
    };
}
