namespace Headroom.Domain.Quantities;

/// <summary>Why a text is not the value that was wanted.</summary>
/// <param name="Kind">The kind of slip.</param>
/// <param name="Allowed">What would be right, in words.</param>
/// <param name="Advice">What to do about it.</param>
public sealed record QuantityProblem(QuantitySlip Kind, string Allowed, string Advice);
