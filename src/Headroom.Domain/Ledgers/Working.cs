namespace Headroom.Domain.Ledgers;

/// <summary>How a figure was worked out.</summary>
/// <param name="Formula">The formula in one or a few lines.</param>
/// <param name="Inputs">The inputs with unit and origin.</param>
/// <param name="Steps">The steps, in order.</param>
/// <param name="Source">The published source of the formula.</param>
public sealed record Working(string Formula, IReadOnlyList<WorkingInput> Inputs, IReadOnlyList<WorkingStep> Steps, string Source);
