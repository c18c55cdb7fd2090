using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Tells which endpoints find no powered port.</summary>
internal sealed class UnservedStory(IReadOnlyList<string> endpoints) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) =>
        $"{Words.List(endpoints)} {(endpoints.Count == 1 ? "finds" : "find")} no powered port: {Words.Of(entry.Demand ?? 0)} are needed, {Words.Of(entry.Limit ?? 0)} are there.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "one powered port for each endpoint that takes its power over the cable",
        [new("endpoints", entry.Demand, "", "survey"), new("of these with a port", entry.Limit, "", "design, free ports taken where nobody patched")],
        [new("without a port", Words.List(endpoints, most: 40), endpoints.Count, "")],
        "count of the survey and the design");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => [new("endpoints of this model", "", entry.Demand, entry.Limit, entry.Limit)];
}
