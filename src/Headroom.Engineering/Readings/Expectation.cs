namespace Headroom.Engineering.Readings;

/// <summary>What a discipline expects a reading to show.</summary>
/// <param name="EntryId">The entry beside which the reading stands.</param>
/// <param name="Value">The value expected under the reading's conditions, [unit of the reading]; null when it could not be worked out.</param>
/// <param name="PlusMinus">Half the interval of the expectation [unit of the reading].</param>
/// <param name="OwnQuantity">True when the reading is of the entry's own quantity in the state that carries its verdict.</param>
/// <param name="IsLimit">True when it is the entry's limit that was read (what is there), false when its demand.</param>
/// <param name="High">What a reading well above means, in words.</param>
/// <param name="Low">What a reading well below means, in words.</param>
public sealed record Expectation(string EntryId, double? Value, double PlusMinus, bool OwnQuantity, bool IsLimit, string High, string Low)
{
    /// <summary>Half the interval of the reading's instrument, where the discipline knows better than a share of the value [unit of the reading]; null where it does not.</summary>
    public double? InstrumentPlusMinus { get; init; }

    /// <summary>What the reading means, where the discipline has weighed it itself; null where the difference alone tells.</summary>
    public string? Finding { get; init; }
}
