using Headroom.Domain.Firms;
using Headroom.Domain.Shown;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Firms;

/// <summary>A firm's own file: what it says of itself on papers, and how it writes.</summary>
internal static class FirmFields
{
    /// <summary>The key that says what the file is.</summary>
    public const string FormatKey = "firm";

    private static readonly ListShape<string> Texts = new("line", Shapes.Text) { OrOne = true };

    private static readonly Field<int> Format = new(FormatKey, new FormatShape(), "The version of the format.", "1") { IsRequired = true };
    private static readonly Field<string> Name = new("name", Shapes.Text, "The firm, as it stands at the head of its papers.", "Reed & Daughters") { IsRequired = true };
    private static readonly Field<IReadOnlyList<string>> Address = new("address", Texts, "Its address, a line each.", "[1 Mill Lane, Ashby]");
    private static readonly Field<string> Phone = new("phone", Shapes.Text, "Its number.", "'+44 1632 960001'");
    private static readonly Field<string> Mail = new("mail", Shapes.Text, "Its address for mail.", "office@reed.example");
    private static readonly Field<string> Web = new("web", Shapes.Text, "Its page.", "reed.example");
    private static readonly Field<Artwork> Logo = new("logo", () => new LogoShape(), "Its picture, a PNG or an SVG of plain shapes, in a file beside this one or in a folder below it.", "logo.svg");
    private static readonly Field<string> Colour = new("colour", new ColourShape(), "The colour of its name and of the rule below; without it ink.", "'#1f4e5f'");
    private static readonly Field<IReadOnlyList<Entry<string, string>>> TaxNumbers = new("tax numbers", new MapShape<string, string>("", Shapes.Name("a number of tax"), Shapes.Text) { KeyExample = "VAT", ThingExample = "GB 999 9999 73" }, "The numbers under which it pays tax or is registered.", "{VAT: GB 999 9999 73}");
    private static readonly Field<string> QuoteNumber = new("quote number", new QuoteNumberShape(), "How its quotations are numbered; {count} is what `papers --number` says, and a blank without it.", "'Q-{year}-{count}'");
    private static readonly Field<string> Currency = new("currency", new CurrencyShape(), "The currency in which it offers. A job that offers in another is refused, since nothing here knows rates.", "EUR");
    private static readonly Field<Enum> Units = new("units", new WordShape<Enum>(("metric", ShownIn.Metric), ("imperial", ShownIn.Imperial)), "Whether papers show metres and kilograms, or feet and pounds.", "metric");
    private static readonly Field<NumberManner> Culture = new("culture", new WordShape<NumberManner>([.. NumberManner.All.Select(manner => (manner.Tag, manner))]), "How numbers and days are written. Values that somebody wrote in the job stay as written.", "en-GB");
    private static readonly Field<int> Valid = new("valid days", new CountShape(1, 730), "For how many days a quotation holds.", "30");
    private static readonly Field<string> Payment = new("payment", Shapes.Text, "How it is to be paid.", "40 % with the order, the rest within 14 days of completion");
    private static readonly Field<IReadOnlyList<string>> Terms = new("terms", Texts, "Its terms, a paragraph each.", "[Cables remain ours until they are paid.]");
    private static readonly Field<IReadOnlyList<Entry<string, LabelStock>>> Labels = new("labels", () => LabelFields.Map, "Its own sheets and strips of labels.", "{flags: {strip: 18 mm}}");

    /// <summary>The file.</summary>
    public static ObjectShape<Firm> Shape { get; } = new(
        "firm", [Format, Name, Address, Phone, Mail, Web, Logo, Colour, TaxNumbers, QuoteNumber, Currency, Units, Culture, Valid, Payment, Terms, Labels], Build) { GoesOn = true };

    private enum ShownIn
    {
        Metric,
        Imperial,
    }

    private static Firm Build(Values values) => new(values.Get(Name) ?? "", values.At)
    {
        Address = values.List(Address),
        Contact = [.. new[] { Phone, Mail, Web }.Where(field => values.Get(field) is not null).Select(field => KeyValuePair.Create(field.Name, values.Get(field)!))],
        Logo = values.Get(Logo),
        Colour = values.Get(Colour),
        TaxNumbers = [.. values.List(TaxNumbers).Select(entry => KeyValuePair.Create(entry.Key, entry.Value))],
        QuoteNumber = values.Get(QuoteNumber),
        Currency = values.Get(Currency) is { } letters ? (letters, values.Entry(Currency)!.Value.At) : null,
        Imperial = values.Get(Units) is { } units ? (ShownIn)units == ShownIn.Imperial : null,
        Manner = values.Get(Culture) ?? NumberManner.Plain,
        ValidDays = values.Maybe(Valid),
        Payment = values.Get(Payment),
        Terms = values.List(Terms),
        Labels = [.. values.List(Labels).Select(entry => entry.Value with { Name = entry.Key })],
    };
}
