using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Erection;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Erection;

public class CrewReportTests
{
    [Fact]
    public void Large_type_fills_the_page_it_was_asked_for()
    {
        Report report = CrewReport.Of(SampleSource.Make());
        PdfBook book = ReportSetting.Of(report);
        Assert.All(book.Pages, p => Assert.Equal(report.Size.WidthMm, p.WidthMm, 1e-9));
        Assert.All(book.Pages, p => Assert.All(p.Words(), w => Assert.True(w.CapHeightMm >= 2.99 && w.Start.X + w.WidthMm() <= p.WidthMm - 15, w.Text)));
        Assert.All(book.Outline, o => Assert.InRange(o.TopMm, 0, report.Size.HeightMm));
    }

    [Fact]
    public void Dangers_come_first()
    {
        string first = string.Join(' ', ReportSetting.Of(CrewReport.Of(SampleSource.Make())).Pages[0].Words().Select(w => w.Text));
        Assert.Contains("Emergency number", first);
        Assert.Contains("Utilities", first);
    }

    // A first reader found "polycarbonate-8-twi / n", "Cou / nt" and "1 / 0" in the tables.
    [Fact]
    public void No_word_and_no_number_is_broken_and_things_have_names()
    {
        string[] words = [.. ReportSetting.Of(CrewReport.Of(SampleSource.Make())).Pages.SelectMany(p => p.Words()).Select(w => w.Text)];
        Assert.All((string[])["Count", "10", "16", "Left roof"], w => Assert.Contains(w, words));
        Assert.DoesNotContain("polycarbonate-16-triple", words);
        Assert.DoesNotContain("A/roof-left", words);
        Assert.Contains(words, w => w.Contains("triple-wall", StringComparison.Ordinal));
    }

    // 3-4-5: common practice of setting out.
    [Fact]
    public void The_diagonal_is_that_of_a_right_angle()
    {
        BuildingForm b = SampleSource.Make().Houses[0].Form with { LengthM = 40, WidthM = 30 };
        Assert.Equal(50, SettingOut.DiagonalM(b), 1e-12);
    }

    // Common practice: 20 ft of polycarbonate move about 7/8 in in 100 °F. Within a sixteenth of an inch.
    [Fact]
    public void Sheet_moves_as_the_trade_says()
    {
        double movedM = Covering.MovementM(20 * 0.3048, 60 - 100 / 1.8);
        Assert.Equal(7.0 / 8 * 0.0254, movedM, 0.0254 / 16);
    }

    // The crew once was told the piers of the frame before its holes were framed: what it digs and what it bolts is what the foundation plan and the cut list say.
    [Fact]
    public void The_crew_digs_for_jambs_and_has_them_on_its_list()
    {
        PaperSource source = SampleSource.Make();
        BuildingForm b = source.Houses[0].Form;
        MemberSolid Jamb(string id, double x) => new(new MemberLine($"{b.Id}/end1/{id}", MemberRole.Jamb, b.Origin + x * b.AlongX, b.Origin + x * b.AlongX + new Point3(0, 0, 2)), b.Id, "tube-2x2x0.120", 0.05, 0.05, 0.003, 4, 2, 0, 0);
        PaperSource framed = source with { Body = source.Body with { Members = source.Body.Members.Concat([Jamb("jamb-1", 3), Jamb("jamb-2", 6)]).ToEqList() } };
        string[] words = [.. ReportSetting.Of(CrewReport.Of(framed)).Pages.SelectMany(p => p.Words()).Select(w => w.Text)];
        Assert.Equal("2", words[Array.IndexOf(words, "Bases F3 under jambs") + 1]);
        Assert.Contains("jamb", words);
        string[] bare = [.. ReportSetting.Of(CrewReport.Of(source)).Pages.SelectMany(p => p.Words()).Select(w => w.Text)];
        Assert.Equal("0", bare[Array.IndexOf(bare, "Bases F3 under jambs") + 1]);
    }

    // Two frames by hand: the heavier counts; pieces along the house belong to none.
    [Fact]
    public void The_heaviest_frame_is_the_sum_of_its_pieces()
    {
        static MemberSolid Solid(string id, MemberRole role, double massPerM, double lengthM) =>
            new(new MemberLine(id, role, default, default), "A", "tube", 0.1, 0.05, 0.003, massPerM, lengthM, 0, 0);
        MemberSolid[] members =
        [
            Solid("A/frame-01/column-left", MemberRole.Column, 5, 2), Solid("A/frame-01/rafter-left", MemberRole.Rafter, 4, 3),
            Solid("A/frame-02/column-left", MemberRole.Column, 5, 2), Solid("A/frame-02/rafter-left", MemberRole.Rafter, 4, 3), Solid("A/frame-02/tie", MemberRole.CollarTie, 2, 1.5),
            Solid("A/ridge-01", MemberRole.Ridge, 9, 30),
        ];
        (double massKg, int count) = FrameStanding.HeaviestFrame(members);
        Assert.Equal(2, count);
        Assert.Equal(10 + 12 + 3, massKg, 1e-12);
    }
}
