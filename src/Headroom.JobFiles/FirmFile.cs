using Headroom.Domain.Findings;
using Headroom.Domain.Firms;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Firms;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Reads a firm's own file: name, address, picture, terms and how it writes.</summary>
public static class FirmFile
{
    /// <summary>The letters in front of the codes of findings about what such a file says.</summary>
    public const string CodePrefix = "FRM";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <returns>The firm, with all findings; not to be used where one of them stands in the way.</returns>
    public static Loaded<Firm> Read(string path)
    {
        var tree = YamlText.ReadFile(path);
        if (tree.Value is null)
            return new(null, tree.Findings);
        var reader = new FieldReader(CodePrefix);
        var read = FirmFields.Shape.Read(tree.Value, reader, out var firm);
        return new(read ? firm : null, YamlText.InOrder([.. tree.Findings, .. reader.Findings]));
    }

    /// <summary>Says whether a file is that of a firm: it has the key <c>firm</c> and not that of a job.</summary>
    /// <param name="path">The file, as the person named it.</param>
    public static bool Is(string path) =>
        YamlText.ReadFile(path).Value is YamlMap map && map.Find(FirmFields.FormatKey) is not null && map.Find("headroom") is null;

    /// <summary>What is wrong when a firm's picture was read and cannot be drawn.</summary>
    /// <param name="file">The file of the firm.</param>
    /// <param name="complaint">Why not.</param>
    public static Finding NotDrawn(string file, string complaint) => new(
        Severity.Error, FirmSlips.NoPicture.Code(CodePrefix), new(file, 1, 1), $"the picture it names cannot be drawn: {complaint}", "a PNG, or an SVG of plain shapes", "save it again as an ordinary PNG");

    /// <summary>What is wrong when a firm offers in one currency and a job in another; null when they agree or one of them says nothing.</summary>
    /// <param name="firm">The firm.</param>
    /// <param name="currency">The currency of the offer, three letters; null when there is no offer.</param>
    public static Finding? OtherCurrency(Firm firm, string? currency)
    {
        if (firm.Currency is not { } own || currency is null || own.Letters == currency)
            return null;
        return new Finding(
            Severity.Error, FirmSlips.OtherCurrency.Code(CodePrefix), own.At, $"the firm offers in {own.Letters}, the job in {currency}", "one currency for both, since nothing here knows rates",
            "use prices in the firm's currency, or the file of a firm that offers in the other");
    }
}
