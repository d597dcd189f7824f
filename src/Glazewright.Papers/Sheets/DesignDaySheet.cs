using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The design days of a house on psychrometric charts, with every state's properties.</summary>
public static class DesignDaySheet
{
    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        UnitSystem units = source.Job.Units;
        SheetDraft draft = new(source, "design-days-" + house.Form.Id, $"House {house.Form.Id}: design days", number);
        Box room = draft.Room;
        AirWay[] days = [AirStory.Summer(house.Duty, house.Plant), AirStory.WetDay(house.Duty, house.Plant)];
        AirWay[] nights = AirStory.DampNight(house.Duty) is { } damp ? [AirStory.WinterNight(house.Duty), damp] : [AirStory.WinterNight(house.Duty)];
        double halfMm = room.Width / 2 - 4;
        List<string> said = [];
        double Column(AirWay[] ways, string id, string title, double x)
        {
            Table states = NumberedStates.Table(ways, units);
            double tableMm = TableSetting.HeightMm(states);
            double chartMm = Math.Max(60, room.Height - 6 - tableMm - 5);
            draft.Heading(title, new(x, room.Top), halfMm);
            Sheet chart = PsychrometricChart.Draw($"{id}-{house.Form.Id}", title, ways, units, halfMm, chartMm);
            said.Add(chart.Description);
            draft.Insets.Add(new Inset(chart, new(x, room.Top + 5)));
            draft.Paper.AddRange(TableSetting.DrawAll(states, new(x, room.Top + 5 + chartMm + 3)));
            return tableMm;
        }

        Column(days, "sheet-summer", "Hottest and wettest design day", room.Left);
        Column(nights, "sheet-nights", "Design nights", room.Left + halfMm + 8);
        return draft.Done(
            string.Join(" ", said),
            "Solid top line: saturation; dashed: relative humidity; dotted: wet bulb. At the pressure of the site's height.",
            "Predicted under the design conditions named, plant and covering as chosen; no warranty. A typical year leaves the extremes out.");
    }
}
