using Headroom.Domain.Ledgers;
using Headroom.Engineering.MeasuredDraws;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Record;

/// <summary>What a firm's record says.</summary>
/// <param name="Terms">How it was studied.</param>
/// <param name="Missing">The files that are not there, with what cannot be told without them.</param>
public sealed record RecordResult(RecordTerms Terms, IReadOnlyList<MissingPart> Missing)
{
    /// <summary>The models of the fleet, and those of the shelf; those believed to fail most often first.</summary>
    public IReadOnlyList<RecordedModel> Models { get; init; } = [];

    /// <summary>Each two models of one kind.</summary>
    public IReadOnlyList<ModelComparison> Pairs { get; init; } = [];

    /// <summary>Each model that stood both hot and cool.</summary>
    public IReadOnlyList<PlaceComparison> Places { get; init; } = [];

    /// <summary>The shelf of each model, as entries of a ledger; empty without a shelf.</summary>
    public IReadOnlyList<LedgerEntry> Shelf { get; init; } = [];

    /// <summary>The jobs in the order of the file.</summary>
    public IReadOnlyList<RecordedJob> Jobs { get; init; } = [];

    /// <summary>How long they took; null when of none both hours are known.</summary>
    public HoursLearned? Hours { get; init; }

    /// <summary>What they made together, each currency by itself.</summary>
    public IReadOnlyList<MoneyMade> Made { get; init; } = [];

    /// <summary>Predicted beside measured.</summary>
    public IReadOnlyList<PredictionCheck> Predictions { get; init; } = [];

    /// <summary>Readings that were compared with nothing, counted by why.</summary>
    public IReadOnlyList<KeyValuePair<string, int>> Left { get; init; } = [];

    /// <summary>What the readings of watts say of each model in each mode.</summary>
    public IReadOnlyList<FittedDraw> Draws { get; init; } = [];

    /// <summary>True when a shelf is short.</summary>
    public bool IsShort => Shelf.Any(entry => entry.Verdict == Verdict.Short);
}
