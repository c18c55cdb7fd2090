namespace Headroom.Desk.Shown;

/// <summary>Why a thing was not moved.</summary>
/// <param name="Said">The reason, in a sentence.</param>
/// <param name="Offer">What may be done instead, as it stands on its button; null for nothing.</param>
/// <param name="Do">What that button asks for.</param>
public sealed record MoveSlip(string Said, string? Offer = null, string Do = "");
