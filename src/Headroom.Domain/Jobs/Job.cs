using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>A job: what the building dictates, the answers offered, what was measured, and the house rules.</summary>
/// <param name="Name">The name people say.</param>
/// <param name="Client">Who it is for; null when not written.</param>
/// <param name="Policy">The house rules.</param>
/// <param name="Survey">What the building dictates.</param>
/// <param name="Designs">The answers, in the order written.</param>
/// <param name="Chosen">The design that is studied when none is named; null when not written.</param>
/// <param name="Readings">What was measured.</param>
/// <param name="Overrulings">Verdicts set aside by somebody, with reason.</param>
/// <param name="At">The file it came from.</param>
public sealed record Job(
    string Name,
    Client? Client,
    Policy Policy,
    Survey Survey,
    IReadOnlyList<Design> Designs,
    string? Chosen,
    IReadOnlyList<Reading> Readings,
    IReadOnlyList<Overruling> Overrulings,
    Place At)
{
    /// <summary>What the firm has in the field, by model; empty when nothing is written.</summary>
    public IReadOnlyList<FleetRow> Fleet { get; init; } = [];

    /// <summary>What the firm charges and wants to keep; null when the job is not about money.</summary>
    public MoneyTerms? Money { get; init; }

    /// <summary>What goods cost in this job, in place of what the catalogue says; empty when nothing is written.</summary>
    public IReadOnlyList<Price> Prices { get; init; } = [];
}
