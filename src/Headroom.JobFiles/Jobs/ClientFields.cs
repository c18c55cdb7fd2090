using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Who the job is for.</summary>
internal static class ClientFields
{
    private static readonly Field<string> Name = new("name", Shapes.Text, "The client's name.", "Fern Lane Veterinary Practice") { IsRequired = true };
    private static readonly Field<string> Paper = new("paper", Shapes.Words("A4", "Letter"), "The paper they print on.", "A4");
    private static readonly Field<string> Currency = new("currency", new CurrencyShape(), "The currency they pay in.", "EUR");

    private static readonly ObjectShape<Client> Keys = new(
        "client", [Name, Paper, Currency], values => new Client(values.Must(Name), values.Get(Paper), values.Get(Currency)));

    /// <summary>A client: a name, or keys.</summary>
    public static Shape<Client> Shape { get; } = new EitherShape<Client>(
        (node => node is YamlMap, Keys),
        (_ => true, new As<string, Client>(Shapes.Text, (text, _) => new Client(text, null, null))));
}
