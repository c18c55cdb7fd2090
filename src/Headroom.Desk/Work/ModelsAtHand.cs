using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Firms;
using Headroom.JobFiles;

namespace Headroom.Desk.Work;

/// <summary>Models and rates as they were read.</summary>
/// <param name="Models">The models.</param>
/// <param name="Rates">The firm's rates; null for none.</param>
/// <param name="ModelText">The files of the models, to be kept with what was worked with them.</param>
/// <param name="RateText">The file of the rates; empty for none.</param>
/// <param name="Findings">What is wrong with the firm's own files.</param>
internal sealed record ModelsAtHand(Catalogue Models, FirmRates? Rates, string ModelText, string RateText, IReadOnlyList<Finding> Findings)
{
    /// <summary>The firm that writes papers; null when its file is not there or something is wrong with it.</summary>
    public Firm? Firm { get; init; }
}
