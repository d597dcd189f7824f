using System.Text.Json;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;

namespace Glazewright.Design.Price;

/// <summary>What the money of an item buys.</summary>
public enum PriceClass
{
    /// <summary>Material: sales tax applies.</summary>
    Material,

    /// <summary>A subcontractor's work with its material.</summary>
    Subcontract,

    /// <summary>Rental, fees, freight.</summary>
    Other,
}

/// <summary>One item of a price book: contractor only.</summary>
/// <param name="Item">Item id, as takeoff lines name it.</param>
/// <param name="Per">Unit the price is for.</param>
/// <param name="UnitCost">Money per unit.</param>
/// <param name="UnitHours">Own labour per unit, h.</param>
/// <param name="Class">What the money buys.</param>
public sealed record PriceItem(string Item, string Per, double UnitCost, double UnitHours, PriceClass Class);

/// <summary>How sure the cost of a system is.</summary>
/// <param name="System">System.</param>
/// <param name="Fraction">Half width of its band, share of its cost.</param>
public sealed record PriceSpread(ScopeSystem System, double Fraction);

/// <summary>A price book: a value, pinned by the hash of its content. Contractor only.</summary>
/// <param name="Name">Name.</param>
/// <param name="Note">Where its prices come from and of when they are.</param>
/// <param name="Spreads">How sure each system's cost is; own labour counts with its system.</param>
/// <param name="CommonSpreadFraction">Half width of what moves all systems together (the market, the crew, the estimator's own slips), share of direct cost.</param>
/// <param name="Items">Items.</param>
public sealed record PriceBook(string Name, string Note, EqList<PriceSpread> Spreads, double CommonSpreadFraction, EqList<PriceItem> Items)
{
    /// <summary>What moves all systems together, where a book does not say: estimating judgement.</summary>
    public const double UsualCommonSpreadFraction = 0.05;

    private const string GenericName = "generic-prices.json";

    /// <summary>Hash of the content: what a quote is pinned to.</summary>
    public StageHash Hash => Canonical.Hash(this);

    /// <summary>The embedded generic book: invented prices.</summary>
    /// <returns>The book.</returns>
    public static PriceBook Generic()
    {
        using Stream stream = typeof(PriceBook).Assembly.GetManifestResourceStream(GenericName)
            ?? throw new InvalidOperationException($"{GenericName} is not embedded.");
        return Read(stream);
    }

    /// <summary>Reads a book.</summary>
    /// <param name="utf8">JSON: name, note, spreads by system, commonSpread, items with id, per, cost, hours, class.</param>
    /// <returns>The book.</returns>
    /// <exception cref="FormatException">Not a price book: what is wrong is in the message.</exception>
    public static PriceBook Read(Stream utf8)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(utf8, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
            JsonElement root = document.RootElement;
            PriceBook book = new(
                root.GetProperty("name").GetString()!,
                root.GetProperty("note").GetString()!,
                root.GetProperty("spreads").EnumerateObject().Select(s => new PriceSpread(Enum.Parse<ScopeSystem>(s.Name), s.Value.GetDouble())).ToEqList(),
                root.TryGetProperty("commonSpread", out JsonElement common) ? common.GetDouble() : UsualCommonSpreadFraction,
                root.GetProperty("items").EnumerateArray().Select(i => new PriceItem(
                    i.GetProperty("id").GetString()!,
                    i.GetProperty("per").GetString()!,
                    i.GetProperty("cost").GetDouble(),
                    i.GetProperty("hours").GetDouble(),
                    Enum.Parse<PriceClass>(i.GetProperty("class").GetString()!))).ToEqList());
            string? bad = book.Items.Where(i => !(i.UnitCost >= 0 && i.UnitHours >= 0)).Select(i => $"{i.Item}: cost and hours must be 0 or more").FirstOrDefault()
                ?? (book.CommonSpreadFraction is >= 0 and < 1 ? null : "commonSpread: a share from 0 to below 1")
                ?? book.Items.GroupBy(i => i.Item).Where(g => g.Count() > 1).Select(g => $"{g.Key}: given twice").FirstOrDefault();
            return bad is null ? book : throw new FormatException(bad);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentException)
        {
            throw new FormatException($"Not a price book: {e.Message}", e);
        }
    }

    /// <summary>An item.</summary>
    /// <param name="id">Item id.</param>
    /// <returns>The item, or null when the book has none.</returns>
    public PriceItem? Find(string id) => Items.FirstOrDefault(i => i.Item == id);
}
