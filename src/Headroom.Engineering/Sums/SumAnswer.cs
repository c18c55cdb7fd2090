using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Sums;

/// <summary>What a sum came to.</summary>
/// <param name="Say">The answer in one sentence; its figures are <see cref="Told"/>, so that they can be shown in other units.</param>
/// <param name="Figures">The figures, the one asked for first.</param>
/// <param name="Steps">How it was worked out.</param>
public sealed record SumAnswer(FormattableString Say, IReadOnlyList<SumFigure> Figures, IReadOnlyList<WorkingStep> Steps)
{
    /// <summary>Whether what was asked about can be; false where the answer is that it cannot.</summary>
    public bool Holds { get; init; } = true;

    /// <summary>What else is to be known, each a sentence.</summary>
    public IReadOnlyList<FormattableString> Notes { get; init; } = [];

    /// <summary>Cautions, where work can hurt somebody or break something.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];
}
