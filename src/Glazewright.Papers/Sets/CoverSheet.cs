using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Sets;

/// <summary>The cover of the drawing set: the section with its sun, the plan, the short answers, the year of the first houses. Reviewers and crew read it too: it names no price.</summary>
public static class CoverSheet
{
    private const double AnswersMm = 158;
    private const int MostAnswers = 11;

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        SheetSize size = SheetStyle.Size(source.Job);
        Box room = Furniture.RoomMm(size);
        double yearMm = source.Houses.Count == 0 ? 0 : 62;
        double upperMm = room.Height - yearMm;
        List<Inset> insets = [];
        List<Entity> paper =
        [
            .. SheetStyle.Border(source.Job, "Cover", number, "pictures; scales on the sheets", "Predicted under the conditions of the job, not a warranty; a typical weather year leaves the extremes out.", SheetStyle.Preliminary),
        ];
        double leftMm = room.Width - AnswersMm - 8;
        if (source.Houses.Count > 0)
        {
            insets.Add(new Inset(HouseSection.Picture(source.Job, source.Houses[0], leftMm, upperMm - 4), new(room.Left, room.Top)));
        }

        QuestionAnswered[] asked = [.. AnswersReport.OpenAnswers(source).Take(MostAnswers)];
        double rightX = room.Right - AnswersMm;
        Table answers = new(
            [new("Asked", 60), new("Short answer", 79), new("", 19)],
            [.. asked.Select(a => (IReadOnlyList<string>)[a.Question, a.Brief, AnswersReport.Word(a.Standing)])]);
        paper.AddRange(TableSetting.DrawAll(answers, new(rightX, room.Top)));
        double planTop = room.Top + TableSetting.HeightMm(answers) + 2;
        double planMm = room.Top + upperMm - 4 - planTop;
        if (planMm > 40)
        {
            insets.Add(new Inset(RangePlan.Picture(source, AnswersMm, planMm), new(rightX, planTop)));
        }

        HouseResults[] shown = [.. source.Houses.Take(2)];
        double carpetMm = (room.Width - 6 * (shown.Length - 1)) / Math.Max(1, shown.Length);
        for (int i = 0; i < shown.Length; i++)
        {
            double x = room.Left + i * (carpetMm + 6);
            double y = room.Top + upperMm;
            if (ClimateAnswer.Carpet(source, shown[i].Year, carpetMm, yearMm - 6) is Sheet carpet)
            {
                string weather = shown[i].Year.Synthetic ? "synthetic weather" : "typical year";
                paper.Add(new Entity.Label(new(x, y + 3), $"House {shown[i].Form.Id}: temperature by day and hour, {weather}") { Role = Role.Text, Face = Face.SemiBold });
                insets.Add(new Inset(carpet, new(x, y + 6)));
            }
        }

        string words = string.Join(" ", asked.Select(a => $"{a.Question} {a.Brief}."));
        return new Sheet("cover", "Cover", words, size.WidthMm, size.HeightMm, [], paper) { Insets = insets };
    }
}
