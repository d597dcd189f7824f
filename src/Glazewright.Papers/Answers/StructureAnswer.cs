using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Framing;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Answers;

/// <summary>Does it stand the snow and the wind? Always preliminary.</summary>
internal static class StructureAnswer
{
    public static QuestionAnswered Of(PaperSource source)
    {
        Said said = new(source.Job.Units);
        string edition = Edition(source.Job.Site.Snow.Edition);
        MemberCheck? worst = source.Houses.SelectMany(h => h.Frame.Checks).OrderByDescending(c => c.Utilisation).FirstOrDefault();
        string sentence = $"Ground snow {said.Text(source.Job.Site.Snow.GroundPa, Unit.AreaLoad)} and wind {said.Round(source.Job.Site.Wind.SpeedMs, Unit.MetrePerSecond)} by {edition}: preliminary member sizes only.";
        bool fails = worst is not null && worst.Utilisation > 1;
        if (worst is not null)
        {
            sentence += fails
                ? FormattableString.Invariant($" The sizes in the job do not carry these loads: the most loaded member, a {MemberSchedule.Word(worst.Role)}, would need {worst.Utilisation:0.0} times its capacity.")
                : FormattableString.Invariant($" The most loaded member, a {MemberSchedule.Word(worst.Role)}, uses {100 * worst.Utilisation:0} % of its capacity. That is not an approval: what was not checked stands below.");
        }

        List<Block> blocks =
        [
            new Block.Figures([
                said.Big("Ground snow", source.Job.Site.Snow.GroundPa, Unit.AreaLoad, edition),
                .. source.Houses.Take(2).Select(h => said.Big($"Roof snow, house {h.Form.Id}", h.Frame.RoofSnowPa, Unit.AreaLoad, FormattableString.Invariant($"thermal factor {h.Frame.ThermalFactor:0.00}"))),
                said.Big("Design wind, gust", source.Job.Site.Wind.SpeedMs, Unit.MetrePerSecond, $"exposure {source.Job.Site.Wind.Exposure}, {Edition(source.Job.Site.Wind.Edition)}"),
            ]),
            new Block.TableOf(Members(source)),
            new Block.Heading(3, "Not checked"),
            new Block.Bullets([.. source.Houses.SelectMany(h => h.Frame.NotChecked).Distinct()]),
            new Block.Caution("Preliminary, not for construction", "Sizes and numbers on this page are for review and sealing by a licensed engineer under the code adopted locally. Loads are to be confirmed with the authority having jurisdiction. Nobody may build from this page."),
        ];
        return new QuestionAnswered("Does it stand the snow and the wind?", fails ? "not with these sizes (preliminary)" : "preliminary sizes only; see what was not checked", sentence, fails ? Standing.Miss : Standing.None, blocks);
    }

    private static Table Members(PaperSource source)
    {
        List<IReadOnlyList<string>> rows = [];
        foreach (HouseResults house in source.Houses)
        {
            foreach (SectionChoice choice in house.Frame.Sections)
            {
                MemberCheck? check = house.Frame.Checks.Where(c => c.Role == choice.Role).OrderByDescending(c => c.Utilisation).FirstOrDefault();
                rows.Add([
                    house.Form.Id,
                    MemberSchedule.Word(choice.Role),
                    choice.Section,
                    check is null ? "–" : FormattableString.Invariant($"{100 * check.Utilisation:0} %"),
                    check?.Combination ?? "not checked",
                    check?.Clause ?? "",
                ]);
            }

            // Around the openings: the hardest-worked of each kind in each wall.
            foreach (OpeningCheck check in house.Framing.Checks.GroupBy(c => (c.Face, c.Role)).Select(g => g.MaxBy(c => c.UseFraction)!).OrderBy(c => c.Role).ThenBy(c => c.Face))
            {
                rows.Add([house.Form.Id, $"{MemberSchedule.Word(check.Role)}, {ServicesCsv.Wall(check.Face)} wall", check.Section, FormattableString.Invariant($"{100 * check.UseFraction:0} %"), check.DeflectionFraction > check.StrengthFraction ? "service wind or weight" : check.Combination, check.Clause]);
            }
        }

        return new Table([new("House", 15), new("Member", 22), new("Section", 36), new("Used", 17, Along.End), new("Combination", 48), new("Check", 39)], rows);
    }

    private static string Edition(LoadEdition edition) => edition == LoadEdition.Asce716 ? "ASCE/SEI 7-16" : "ASCE/SEI 7-22";
}
