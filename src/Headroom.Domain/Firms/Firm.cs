using Headroom.Domain.Findings;
using Headroom.Domain.Shown;

namespace Headroom.Domain.Firms;

/// <summary>What a firm says of itself on its papers.</summary>
/// <param name="Name">Its name.</param>
/// <param name="At">Where the file begins.</param>
public sealed record Firm(string Name, Place At)
{
    /// <summary>Its address, a line each.</summary>
    public IReadOnlyList<string> Address { get; init; } = [];

    /// <summary>How to reach it, each with its word in front: <c>phone</c>, <c>mail</c>, <c>web</c>.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Contact { get; init; } = [];

    /// <summary>The numbers under which it pays tax or is registered, each under its name.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> TaxNumbers { get; init; } = [];

    /// <summary>The picture it signs with; null for none.</summary>
    public Artwork? Logo { get; init; }

    /// <summary>Its colour, as <c>#rrggbb</c>; null for ink.</summary>
    public string? Colour { get; init; }

    /// <summary>Its terms, a paragraph each.</summary>
    public IReadOnlyList<string> Terms { get; init; } = [];

    /// <summary>How it wants to be paid; null when not said.</summary>
    public string? Payment { get; init; }

    /// <summary>For how long a quotation holds [d]; null when not said.</summary>
    public int? ValidDays { get; init; }

    /// <summary>The pattern of the numbers of its quotations; null when not said.</summary>
    public string? QuoteNumber { get; init; }

    /// <summary>The currency in which it offers, three letters, with the place where it says so; null when not said.</summary>
    public (string Letters, Place At)? Currency { get; init; }

    /// <summary>How it writes numbers and days.</summary>
    public NumberManner Manner { get; init; } = NumberManner.Plain;

    /// <summary>Whether its papers show feet and pounds; null when not said.</summary>
    public bool? Imperial { get; init; }

    /// <summary>Its own sheets and strips of labels.</summary>
    public IReadOnlyList<LabelStock> Labels { get; init; } = [];
}
