using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Tests.Sample;

/// <summary>A story told beforehand.</summary>
internal sealed record Told(string Sentence, Working Working, params Holds[] Rows) : IEntryStory
{
    public static Told Nothing { get; } = new("something is the matter", new("a = b", [], [], "common practice, no source"));

    public string Say(LedgerEntry entry) => Sentence;

    public Working Work(LedgerEntry entry) => Working;

    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => Rows;
}
