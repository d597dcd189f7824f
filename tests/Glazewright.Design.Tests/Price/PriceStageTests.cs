using System.Text;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Tests.Takeoff;
using Glazewright.Science.Optics;

namespace Glazewright.Design.Tests.Price;

public class PriceStageTests
{
    private static readonly CutsResult Cuts = CutsStage.Run(
        new CutsInput(UnitSystem.Us, [20 * 0.3048, 24 * 0.3048], 0.0025), TwoHouses.Takeoff, CancellationToken.None);

    private static readonly Pricing Pricing = new("", 58, 0.09, 0.04, 0.14, 0, 30, [0.2, 0.25, 0.25, 0.2, 0.1], []);

    private static PriceResult Run(Pricing pricing, TakeoffResult? takeoff = null, PriceBook? book = null) =>
        PriceStage.Run(new PriceInput(pricing, [], 503.9, 237.6), takeoff ?? TwoHouses.Takeoff, Cuts, book ?? PriceBook.Generic());

    /// <summary>
    /// The arithmetic of the trade's example (common practice; computed by hand): direct 532 000, overhead 9 %, contingency 4 %, margin 14 % of price
    /// give 601 160 / 0.86 = 699 023; the mark-up trap 601 160 · 1.14 = 685 322.
    /// </summary>
    [Fact]
    public void Margin_is_a_share_of_the_price_and_the_mark_up_trap_is_shown()
    {
        TakeoffResult one = TwoHouses.Takeoff with { Lines = [new TakeoffLine("general/clean", "all", ScopeSystem.General, 1, "m²", "", ScopeBy.Us)] };
        PriceBook book = new("test", "", [], 0, [new PriceItem("general/clean", "m²", 532_000, 0, PriceClass.Other)]);
        PriceResult price = Run(Pricing, one, book);
        Assert.Equal(532_000, price.DirectCost, tolerance: 1e-6);
        Assert.Equal(699_023.26, price.Quote.Price, tolerance: 0.01);
        Assert.Equal(685_322.40, price.MarkupTrapPrice, tolerance: 0.01);
        Assert.Equal(0.14, price.Margin / price.Quote.Price, tolerance: 1e-12);
        Assert.Equal(0.2 * price.Quote.Price, price.Quote.Draws[0], tolerance: 1e-6);
        Assert.Equal(price.Quote.Price, price.Quote.Draws.Sum(), tolerance: 1e-6);
    }

    [Fact]
    public void Lines_systems_and_direct_cost_are_one_sum()
    {
        PriceResult price = Run(Pricing with { SalesTaxFraction = 0.06 });
        double taxed = price.Lines.Where(l => PriceBook.Generic().Find(l.Item)!.Class == PriceClass.Material).Sum(l => l.Cost);
        Assert.Equal(price.Lines.Sum(l => l.Cost) + (58 * price.Lines.Sum(l => l.LabourHours)) + (0.06 * taxed), price.DirectCost, tolerance: 1e-6);
        Assert.Equal(price.DirectCost + price.Overhead + price.Contingency + price.Margin, price.Quote.Price, tolerance: 1e-6);
    }

    [Fact]
    public void Tube_and_sheet_are_priced_as_bought_not_net()
    {
        PriceResult price = Run(Pricing);
        foreach (SectionCuts section in Cuts.Sections)
        {
            string label = section.Section.StartsWith("panel", StringComparison.Ordinal) ? "Insulated panel panel-76" : section.Section;
            PricedLine line = price.Lines.Single(l => l.Label == label);
            TakeoffLine net = TwoHouses.Takeoff.Lines.Single(l => l.Label == label);
            Assert.True(line.Quantity >= net.Quantity - 1e-9, $"{section.Section}: {line.Quantity} bought, {net.Quantity} net");
        }
    }

    [Fact]
    public void Lines_by_others_cost_nothing_and_allowances_stay()
    {
        TakeoffResult scoped = TakeoffStage.Run(
            TwoHouses.Input with { Scope = [new(ScopeSystem.Benches, ScopeBy.Owner, ""), new(ScopeSystem.Electrical, ScopeBy.Allowance, "")] },
            TwoHouses.Form, TwoHouses.Body, TwoHouses.Plants, [], TwoHouses.Services);
        PriceResult price = Run(Pricing, scoped);
        PriceResult ours = Run(Pricing);
        Assert.All(price.Lines.Where(l => l.System == ScopeSystem.Benches), l => Assert.Equal((0, 0), (l.Cost, l.LabourHours)));
        Assert.Equal(Cost(ours, ScopeSystem.Electrical), Cost(price, ScopeSystem.Electrical), tolerance: 1e-9);
        Assert.True(price.Quote.Price < ours.Quote.Price);
        Assert.Contains(price.Report.Findings, f => f.Code == "price/allowance");

        static double Cost(PriceResult p, ScopeSystem system) => p.Systems.Single(s => s.System == system).Cost;
    }

    [Fact]
    public void The_embedded_book_prices_every_line_in_its_own_unit() =>
        Assert.DoesNotContain(Run(Pricing).Report.Findings, finding => finding.Code == "price/no-price");

    [Fact]
    public void The_embedded_book_prices_every_generic_covering_and_fan()
    {
        PriceBook book = PriceBook.Generic();
        foreach (GenericCover cover in GenericCovers.All)
        {
            CoverForm form = CoverBuying.Of(cover.Id, UnitSystem.Us).Form;
            Assert.True(CoverBuying.Of(cover.Id, UnitSystem.Us).IsKnown, cover.Id);
            string item = form switch { CoverForm.Sheet => LineItems.Sheet(cover.Id), CoverForm.Panel => LineItems.Panel(cover.Id), _ => $"glazing/{cover.Id}" };
            Assert.Equal("m²", book.Find(item)?.Per);
        }

        Assert.All(CatalogueReader.Generic.Fans, fan => Assert.NotNull(book.Find(LineItems.Fan(fan.DiameterM))));
    }

    [Fact]
    public void A_missing_price_is_said_aloud_and_an_override_replaces_one()
    {
        PriceBook book = PriceBook.Generic();
        PriceResult less = Run(Pricing, book: book with { Items = book.Items.Where(i => i.Item != "doors/single").ToEqList() });
        Finding finding = Assert.Single(less.Report.Findings, f => f.Code == "price/no-price");
        Assert.Equal((Severity.Miss, "doors/single"), (finding.Severity, finding.Id));
        PriceResult dear = Run(Pricing with { Overrides = [new PriceOverride("doors/single", 10_000)] });
        PricedLine doors = dear.Lines.Single(l => l.Item == "doors/single");
        Assert.Equal(10_000 * doors.Quantity, doors.Cost, tolerance: 1e-9);
    }

    [Fact]
    public void Only_the_quote_side_of_the_figures_is_open()
    {
        PriceResult price = Run(Pricing);
        string[] open = [.. price.Report.Figures.Where(f => !f.Confidential).Select(f => f.Id)];
        Assert.All(open, id => Assert.True(
            id is "price/price" or "price/low" or "price/high" or "price/per-floor" or "price/per-bench" || id.StartsWith("price/draw-", StringComparison.Ordinal), id));
        Assert.All(price.Report.Figures.Where(f => !f.Confidential), figure =>
            Assert.All(
                figure.Working is Working.Derived derived ? derived.Inputs : [],
                input => Assert.DoesNotContain(price.Report.Figures, other => other.Id == input.Reference && other.Confidential)));
        Assert.All(price.Report.Findings.Where(f => f.Code != "price/allowance"), f => Assert.True(f.Confidential, f.Code));
    }

    [Fact]
    public void A_dearer_hour_moves_the_price_by_the_hours_and_nothing_else()
    {
        PriceResult a = Run(Pricing);
        PriceResult b = Run(Pricing with { LabourPerHour = 59 });
        Assert.Equal(a.LabourHours, b.DirectCost - a.DirectCost, tolerance: 1e-6);
        Assert.Equal(a.Lines, b.Lines);
    }

    [Theory]
    [InlineData("{", "Not a price book")]
    [InlineData("{\"name\":\"x\",\"note\":\"\",\"spreads\":{\"Roads\":1},\"items\":[]}", "Roads")]
    [InlineData("{\"name\":\"x\",\"note\":\"\",\"spreads\":{},\"items\":[{\"id\":\"a\",\"per\":\"m\",\"cost\":-1,\"hours\":0,\"class\":\"Other\"}]}", "0 or more")]
    [InlineData("{\"name\":\"x\",\"note\":\"\",\"items\":[]}", "Not a price book")]
    public void A_broken_book_says_what_is_wrong(string json, string word)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(json));
        Assert.Contains(word, Assert.Throws<FormatException>(() => PriceBook.Read(stream)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_hash_of_a_book_moves_with_any_price()
    {
        PriceBook book = PriceBook.Generic();
        Assert.Equal(book.Hash, PriceBook.Generic().Hash);
        Assert.NotEqual(book.Hash, (book with { Items = book.Items.Select((i, n) => n == 0 ? i with { UnitCost = i.UnitCost + 0.01 } : i).ToEqList() }).Hash);
    }
}
