using System.Globalization;
using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Firms;

namespace Headroom.Documents.Papers;

/// <summary>What a firm puts on papers.</summary>
public static class FirmOnPapers
{
    private const string Blank = "____";

    // The foot has one line for firm, job, design, day and paper.
    private const int MostAtFoot = 40;

    /// <summary>What stands in the way of using a firm's picture; null when nothing does.</summary>
    /// <param name="firm">The firm.</param>
    public static string? Complaint(Firm firm) => firm.Logo is { } logo && ArtPath.Complaint(logo) is { } problem ? problem : null;

    /// <summary>The head of its papers.</summary>
    internal static Letterhead Head(Firm firm) => new(
        firm.Name,
        [.. new[]
            {
                string.Join(", ", firm.Address), string.Join(" · ", firm.Contact.Select(one => one.Value)), string.Join(" · ", firm.TaxNumbers.Select(number => $"{number.Key} {number.Value}")),
            }.Where(line => line.Length > 0)]) { Logo = firm.Logo };

    /// <summary>Its name for the foot of a sheet; the whole of a long one stands at the head.</summary>
    internal static string Short(Firm firm) => firm.Name.Length <= MostAtFoot ? firm.Name : firm.Name[..MostAtFoot].TrimEnd() + "…";

    /// <summary>Whom to call: the firm with its number; empty when there is none.</summary>
    internal static string Call(PaperInput input) => input.Firm is { } firm ? string.Join(", ", new[] { firm.Name, Phone(input) }.Where(part => part.Length > 0)) : "";

    /// <summary>The number to call; empty when the firm says none.</summary>
    internal static string Phone(PaperInput input) => input.Firm?.Contact.FirstOrDefault(one => one.Key == "phone").Value ?? "";

    /// <summary>The number of a quotation; empty when the firm has no pattern, with a blank where its count is not told.</summary>
    internal static string QuoteNumber(PaperInput input)
    {
        if (input.Firm?.QuoteNumber is not { } pattern)
            return input.QuoteCount ?? "";
        var on = input.Ledger.On;
        return pattern
            .Replace("{year}", on.ToString("yyyy", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{month}", on.ToString("MM", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{day}", on.ToString("dd", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{design}", input.Ledger.Design, StringComparison.Ordinal)
            .Replace("{count}", input.QuoteCount ?? Blank, StringComparison.Ordinal);
    }

    /// <summary>The last day on which a quotation holds; empty when the firm does not say.</summary>
    internal static string ValidUntil(PaperInput input) => input.Firm?.ValidDays is { } days ? Written.Day(input.Ledger.On.AddDays(days)) : "";

    /// <summary>The terms of the firm, a paragraph each.</summary>
    internal static IEnumerable<Block> Terms(PaperInput input) => (input.Firm?.Terms ?? []).Select(text => new Words(text));
}
