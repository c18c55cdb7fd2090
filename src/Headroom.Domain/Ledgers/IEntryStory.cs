namespace Headroom.Domain.Ledgers;

/// <summary>What can be told about an entry when somebody asks. Nothing of it is gathered while the study runs.</summary>
public interface IEntryStory
{
    /// <summary>Where the entry's bar begins, for units in which zero means nothing, such as dB(A) or °C; null for zero.</summary>
    double? Floor => null;

    /// <summary>One or two plain sentences: what is short or tight, and why.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>The sentences, without advice.</returns>
    string Say(LedgerEntry entry);

    /// <summary>The full working.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>Formula, inputs, steps and source.</returns>
    Working Work(LedgerEntry entry);

    /// <summary>Up to where it holds: for each input the installer can change, the value at which limit and reserve are just kept.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>One row an input; empty when an input is missing.</returns>
    IReadOnlyList<Holds> Holds(LedgerEntry entry);
}
