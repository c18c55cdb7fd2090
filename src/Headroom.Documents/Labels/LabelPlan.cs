using Headroom.Domain.Firms;

namespace Headroom.Documents.Labels;

/// <summary>Which labels are wanted, and on what.</summary>
/// <param name="Stock">The sheet or strip.</param>
public sealed record LabelPlan(LabelStock Stock)
{
    /// <summary>The kinds of label there are: what they are put on.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["ports", "cables", "units", "closets"];

    /// <summary>How a label holds on a cable: laid around it, or folded over it as a flag.</summary>
    public static IReadOnlyList<string> WaysOfEnds { get; } = ["wrap", "flag"];

    /// <summary>Which code a label carries: the one that fits, one of two, or none.</summary>
    public static IReadOnlyList<string> Codes { get; } = ["fit", "qr", "code-128", "none"];

    /// <summary>The kinds wanted.</summary>
    public IReadOnlyList<string> Of { get; init; } = Kinds;

    /// <summary>On which label of the first sheet printing begins, from 1, row by row.</summary>
    public int First { get; init; } = 1;

    /// <summary>How labels hold on cables.</summary>
    public string Ends { get; init; } = "wrap";

    /// <summary>The code wanted.</summary>
    public string Code { get; init; } = "fit";
}
