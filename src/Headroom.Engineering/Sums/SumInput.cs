using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums;

/// <summary>One thing a sum needs to know.</summary>
/// <param name="name">The name in plain words with hyphens.</param>
/// <param name="meaning">What it is, in a few words.</param>
public abstract class SumInput(string name, string meaning)
{
    /// <summary>The name in plain words with hyphens.</summary>
    public string Name => name;

    /// <summary>What it is, in a few words.</summary>
    public string Meaning => meaning;

    /// <summary>What is taken when nothing is given, as it would be written; null when it must be given or may stay away.</summary>
    public string? Default { get; init; }

    /// <summary>Why that is taken; empty when there is no default.</summary>
    public string DefaultWhy { get; init; } = "";

    /// <summary>Whether the sum works without it, and then says less.</summary>
    public bool IsOptional { get; init; }

    /// <summary>Whether somebody has to give it.</summary>
    public bool MustBeGiven => Default is null && !IsOptional;

    /// <summary>What may be written, in words: <c>a length between 0.1 and 2000 m</c>.</summary>
    public abstract string Allowed { get; }

    /// <summary>Reads what was written.</summary>
    /// <param name="text">The text.</param>
    /// <param name="problem">What is wrong with it; null when nothing.</param>
    /// <returns>The value; null with a problem.</returns>
    public abstract SumValue? Read(string text, out QuantityProblem? problem);

    /// <summary>The rows that stand for a value among the inputs of a working.</summary>
    /// <param name="value">The value.</param>
    /// <returns>One row, or one for each part of a list.</returns>
    public abstract IReadOnlyList<WorkingInput> Rows(SumValue value);

    /// <summary>Whether a word can be part of a value, so that it is no misspelt name.</summary>
    /// <param name="word">The word.</param>
    /// <returns>True when it can.</returns>
    public abstract bool Knows(string word);

    /// <summary>Where a value comes from, in words.</summary>
    /// <param name="value">The value.</param>
    /// <returns>What was given, or what was taken and why.</returns>
    protected string Origin(SumValue value) => value.IsDefault ? $"not given: {DefaultWhy}" : $"given: {value.Written}";
}
